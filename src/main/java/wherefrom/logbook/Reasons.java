package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Objects;

/** Why a disk refused, in words, without a full stop. */
final class Reasons {
  private Reasons() {}

  static String of(IOException e) {
    if (e instanceof FileSystemException file) {
      return file.getFile() + ": " + words(file);
    }
    return Objects.requireNonNullElse(e.getMessage(), "the disk gave no reason");
  }

  private static String words(FileSystemException e) {
    if (e instanceof NoSuchFileException) {
      return "there is no such file";
    }
    if (e instanceof AccessDeniedException) {
      return "access is denied";
    }
    if (e instanceof FileAlreadyExistsException) {
      return "it exists already";
    }
    if (e instanceof NotDirectoryException || e instanceof DirectoryNotEmptyException) {
      return "it is no empty folder";
    }
    return Objects.requireNonNullElse(e.getReason(), "the disk gave no reason");
  }
}
