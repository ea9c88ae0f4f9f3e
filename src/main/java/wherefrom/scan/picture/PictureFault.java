package wherefrom.scan.picture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Sentences for picture files that cannot be read: what is wrong and what to do. */
final class PictureFault {
  private PictureFault() {}

  /**
   * Refuses what is no file with something in it.
   *
   * @throws IOException with the sentence
   */
  static void refuseUnlessFile(Path file) throws IOException {
    if (Files.isDirectory(file)) {
      throw new IOException(file + " is a folder: choose a picture in it.");
    }
    if (!Files.exists(file)) {
      throw new IOException(file + " is not there: check its name.");
    }
    if (!Files.isReadable(file)) {
      throw new IOException(file + " may not be read: ask its owner, or copy it.");
    }
    if (Files.size(file) == 0) {
      throw new IOException(file + " is empty: take the picture again, or copy it again.");
    }
  }

  static IOException noPicture(Path file) {
    return new IOException(
        file + " is no picture that can be read: save it as a PNG or JPEG file.");
  }

  static IOException damaged(Path file, Throwable cause) {
    return new IOException(
        file + " is damaged: copy it again, take the picture again, or save it as a PNG file.",
        cause);
  }

  static IOException tooLarge(Path file, long width, long height) {
    return new IOException(
        String.format(
            Locale.ROOT,
            "%s is too large with %d x %d pixels: cut out the part with the tag.",
            file,
            width,
            height));
  }
}
