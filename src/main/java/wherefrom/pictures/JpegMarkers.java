package wherefrom.pictures;

import java.io.DataInputStream;
import java.io.IOException;

/** The markers of a JPEG file, one after the other (ITU-T T.81, annex B). */
final class JpegMarkers {
  private static final int FIRST_FRAME = 0xC0;
  private static final int LAST_FRAME = 0xCF;
  private static final int PROGRESSIVE = 2;
  private static final int SCAN = 0xDA;
  private static final int END = 0xD9;
  private static final int FIRST_APPLICATION = 0xE0;
  private static final int LAST_APPLICATION = 0xEF;
  private static final int COMMENT = 0xFE;

  /** Depth maps and edits that cameras put in front of the picture stay below. */
  private static final long MOST_BALLAST = 64_000_000;

  /** A picture in several scans is held as coefficients of two bytes: no more of them than this. */
  private static final long MOST_COEFFICIENTS = 130_000_000;

  /** Encoders write ten or so scans; every one goes over the whole picture. */
  private static final long MOST_PASSES = 1_500_000_000;

  /**
   * A scan of one colour needs a bit for 64 pixels; this far beyond, nearly all of it is missing.
   */
  private static final long MOST_PIXELS_PER_BYTE = 2_000;

  private static final long SMALL = 20_000_000;

  private final DataInputStream in;
  private long pixels;
  private int components;
  private long ballast;
  private int scans;
  private boolean progressive;

  JpegMarkers(DataInputStream in) {
    this.in = in;
  }

  /**
   * Refuses a picture that is too large, is stored in too many scans or carries too much besides.
   *
   * @param first the marker behind the start of the image
   */
  void check(int first) throws IOException {
    int marker = first;
    while (marker != END) {
      boolean several = take(marker);
      if (marker == SCAN && !several) {
        requireContent();
        return;
      }
      marker = next();
    }
  }

  /** Takes one segment in; gives whether the picture is in several scans. */
  private boolean take(int marker) throws IOException {
    if (marker == 0 || marker == 1 || marker >= 0xD0 && marker <= 0xD8) {
      return true;
    }
    int length = Math.max(0, in.readUnsignedShort() - 2);
    if (isFrame(marker)) {
      progressive = marker % 4 == PROGRESSIVE;
      length -= takeFrame();
    } else if (marker == SCAN) {
      int inScan = in.readUnsignedByte();
      length--;
      takeScan(inScan);
      in.skipNBytes(Math.max(0, length));
      return isHeld(inScan);
    } else if (marker >= FIRST_APPLICATION && marker <= LAST_APPLICATION || marker == COMMENT) {
      ballast += length;
      if (ballast > MOST_BALLAST) {
        throw PictureGate.ballast(ballast);
      }
    }
    in.skipNBytes(Math.max(0, length));
    return true;
  }

  /** Tables and arithmetic conditioning have numbers among those of frames: C4, C8, CC. */
  private static boolean isFrame(int marker) {
    return marker >= FIRST_FRAME && marker <= LAST_FRAME && marker % 4 != 0
        || marker == FIRST_FRAME;
  }

  /** Whether all of it is held until the last scan: it is progressive, or one colour at a time. */
  private boolean isHeld(int inScan) {
    return progressive || scans > 1 || inScan < components;
  }

  private int takeFrame() throws IOException {
    in.readUnsignedByte();
    int height = in.readUnsignedShort();
    int width = in.readUnsignedShort();
    components = in.readUnsignedByte();
    pixels = (long) width * height;
    PictureGate.requireSize(width, height);
    return 6;
  }

  private void takeScan(int inScan) throws PictureGate.TooMuch {
    scans++;
    if (isHeld(inScan) && pixels * components > MOST_COEFFICIENTS || scans * pixels > MOST_PASSES) {
      throw new PictureGate.TooMuch(
          "is stored in many passes over "
              + pixels / 1_000_000
              + " million pixels: save it as a plain JPEG file, not a progressive one.");
    }
  }

  private void requireContent() throws IOException {
    long most = pixels / MOST_PIXELS_PER_BYTE;
    if (pixels > SMALL && in.skip(most) < most && in.read() < 0) {
      throw new PictureGate.TooMuch(
          "is cut off: nearly all of its picture is missing. Copy it again.");
    }
  }

  /** Goes on to the next marker, over what the scan holds. */
  private int next() throws IOException {
    int before = in.readUnsignedByte();
    while (true) {
      int here = in.readUnsignedByte();
      if (before == 0xFF && here != 0 && here != 0xFF && !isRestart(here)) {
        return here;
      }
      before = here;
    }
  }

  private static boolean isRestart(int marker) {
    return marker >= 0xD0 && marker <= 0xD7;
  }
}
