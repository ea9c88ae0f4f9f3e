package wherefrom.scan.picture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import wherefrom.files.Heic;
import wherefrom.pictures.PictureGate;

/** A picture file that cannot be read: its sentence says what is wrong and what to do. */
final class PictureFault extends IOException {
  private static final long serialVersionUID = 1;

  private PictureFault(String sentence, @Nullable Throwable cause) {
    super(sentence, cause);
  }

  private static PictureFault of(String sentence) {
    return new PictureFault(sentence, null);
  }

  /**
   * Refuses what is no file with something in it.
   *
   * @throws IOException with the sentence
   */
  static void refuseUnlessFile(Path file) throws IOException {
    if (Files.isDirectory(file)) {
      throw of(file + " is a folder. Choose a picture in it.");
    }
    if (!Files.exists(file)) {
      throw of(file + " is not there. Check its name.");
    }
    if (!Files.isReadable(file)) {
      throw of(file + " may not be read. Ask its owner, or copy it.");
    }
    if (!Files.isRegularFile(file)) {
      throw of(file + " is not a picture file. Choose one.");
    }
    if (Files.size(file) == 0) {
      throw of(file + " is empty. Take the picture again, or copy it again.");
    }
  }

  static PictureFault noPicture(Path file) {
    String saved = " is not a picture that can be read. Save it as a PNG or JPEG file.";
    return of(file + (Heic.is(file) ? Heic.REMEDY : saved));
  }

  static PictureFault damaged(Path file, Throwable cause) {
    return new PictureFault(
        file + " is damaged. Copy it again, take it again, or save it as PNG.", cause);
  }

  static PictureFault tooMuch(Path file, PictureGate.TooMuch tooMuch) {
    return new PictureFault(file + " " + tooMuch.getMessage(), tooMuch);
  }
}
