package wherefrom.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Objects;
import wherefrom.text.Words;

/** Sentences for what the system says of files. */
final class Faults {
  private Faults() {}

  static String sentence(IOException e) {
    if (!(e instanceof FileSystemException fault)) {
      return Words.withStop(Objects.requireNonNullElse(e.getMessage(), "The disk gave no reason."));
    }
    String file = fault.getFile() + ": ";
    if (e instanceof NoSuchFileException) {
      return file + "it is not there. Check the path.";
    }
    if (e instanceof AccessDeniedException) {
      return file + "access is denied. Look at its permissions.";
    }
    if (e instanceof FileAlreadyExistsException) {
      return file + "it exists already. Choose another name.";
    }
    if (e instanceof NotDirectoryException) {
      return file + "it is not a folder. Check the path.";
    }
    return file + Objects.requireNonNullElse(fault.getReason(), "the disk gave no reason") + ".";
  }
}
