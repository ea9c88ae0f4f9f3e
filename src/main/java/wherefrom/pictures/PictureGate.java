package wherefrom.pictures;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.util.Locale;
import wherefrom.pictures.ColourFile.Opening;

/**
 * Looks at a picture's header before anything of it is decoded, and refuses what would fill the
 * memory or take minutes.
 */
public final class PictureGate {
  /** The largest camera sensors sold have 150 million (common practice, no source). */
  public static final long MOST_PIXELS = 200_000_000;

  private static final int PNG_START = 0x89504E47;
  private static final int JPEG_START = 0xFFD8;

  private PictureGate() {}

  /** A picture that is too much; the message goes on behind the file's name, with a full stop. */
  public static final class TooMuch extends IOException {
    private static final long serialVersionUID = 1;

    TooMuch(String rest) {
      super(rest);
    }
  }

  /**
   * Lets a picture through, and every file that is none: that is for the decoder to say.
   *
   * @throws TooMuch when it must not be decoded
   * @throws IOException when the file cannot be read
   */
  public static void pass(Opening file) throws IOException {
    try (DataInputStream in = new DataInputStream(new BufferedInputStream(file.open()))) {
      int start = in.readInt();
      if (start == PNG_START) {
        in.readInt();
        new PngChunks(in).check();
      } else if (start >>> 16 == JPEG_START && (start >> 8 & 0xFF) == 0xFF) {
        new JpegMarkers(in).check(start & 0xFF);
      }
    } catch (EOFException e) {
      // It breaks off: the decoder reads what there is, or says so.
    }
  }

  /** Refuses a picture of more pixels than any camera takes. */
  public static void requireSize(long width, long height) throws TooMuch {
    if (width * height > MOST_PIXELS) {
      throw new TooMuch(
          String.format(
              Locale.ROOT,
              "is too large with %d x %d pixels: cut out the part that matters.",
              width,
              height));
    }
  }

  static TooMuch ballast(long bytes) {
    return new TooMuch(
        "carries "
            + bytes / 1_000_000
            + " MB besides the picture: save it again as a plain PNG or JPEG file.");
  }
}
