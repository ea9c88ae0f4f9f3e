package wherefrom.scan.camera;

import java.nio.ByteBuffer;
import wherefrom.job.CameraFrame;
import wherefrom.job.GreyImage;

/** Room for one frame, used again for the next frame of the same size. */
final class FrameBuffer {
  private static final int BYTES_PER_PIXEL = 4;

  /** Weights of blue, green and red in 1/256 by ITU-R BT.601: 0.114, 0.587, 0.299. */
  private static final int BLUE = 29;

  private static final int GREEN = 150;
  private static final int RED = 77;

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
    greyFromColour();
  }

  private void greyFromColour() {
    byte[] from = bgra;
    byte[] to = grey;
    for (int pixel = 0, at = 0; pixel < to.length; pixel++, at += BYTES_PER_PIXEL) {
      int blue = from[at] & 0xFF;
      int green = from[at + 1] & 0xFF;
      int red = from[at + 2] & 0xFF;
      to[pixel] = (byte) ((BLUE * blue + GREEN * green + RED * red) >> 8);
    }
  }

  /** The frame itself: it changes when the buffer is filled again. */
  CameraFrame frame() {
    return new CameraFrame(new GreyImage(width, height, grey), bgra);
  }
}
