package wherefrom.scan.camera;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import wherefrom.job.image.CameraFrame;
import wherefrom.job.image.GreyImage;

/** Room for one frame, used again for the next frame of the same size. */
final class FrameBuffer {
  private static final int BYTES_PER_PIXEL = 4;

  /** Weights of blue, green and red in 1/256 by ITU-R BT.601: 0.114, 0.587, 0.299. */
  private static final int BLUE = 29;

  private static final int GREEN = 150;
  private static final int RED = 77;

  private static final long BLUE_AND_RED = RED + ((long) BLUE << 16);
  private static final long LANES = 0x00FF_00FF_00FF_00FFL;
  private static final VarHandle LONGS =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

  private byte[] bgra = {};
  private byte[] grey = {};
  private int width;
  private int height;

  /**
   * Takes a picture over.
   *
   * @param stride bytes from one row to the next, at least four a pixel
   */
  void fill(ByteBuffer picture, int newWidth, int newHeight, int stride) {
    width = newWidth;
    height = newHeight;
    int rowBytes = width * BYTES_PER_PIXEL;
    if (bgra.length != rowBytes * height) {
      bgra = new byte[rowBytes * height];
      grey = new byte[width * height];
    }
    if (stride == rowBytes) {
      picture.get(0, bgra);
    } else {
      for (int row = 0; row < height; row++) {
        picture.get(row * stride, bgra, row * rowBytes, rowBytes);
      }
    }
    greyFromColour(bgra, grey);
  }

  /**
   * Two pixels at a time, in lanes of 16 bits. Blue and red stand in the even lanes once green is
   * masked off; one multiplication puts blue's part beside red's, and green's part is added there.
   * No lane overflows: the weights add up to 256.
   */
  private static void greyFromColour(byte[] bgra, byte[] grey) {
    int pixel = 0;
    for (; pixel + 1 < grey.length; pixel += 2) {
      long two = (long) LONGS.get(bgra, pixel * BYTES_PER_PIXEL);
      long sum = (two & LANES) * BLUE_AND_RED + ((two >>> 8 & LANES) << 16) * GREEN;
      grey[pixel] = (byte) (sum >>> 24);
      grey[pixel + 1] = (byte) (sum >>> 56);
    }
    if (pixel < grey.length) {
      int at = pixel * BYTES_PER_PIXEL;
      int green = bgra[at + 1] & 0xFF;
      grey[pixel] =
          (byte) ((BLUE * (bgra[at] & 0xFF) + GREEN * green + RED * (bgra[at + 2] & 0xFF)) >> 8);
    }
  }

  /** The frame itself: it changes when the buffer is filled again. */
  CameraFrame frame() {
    return new CameraFrame(new GreyImage(width, height, grey), bgra);
  }
}
