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
final class DiskErrors {
  private static final String FULL = "the disk is full";

  private DiskErrors() {}

  static String of(IOException e) {
    if (e instanceof FileSystemException file) {
      return file.getFile() + ": " + words(file);
    }
    String reason = Objects.requireNonNullElse(e.getMessage(), "the disk gave no reason");
    return isFull(reason) ? FULL : reason;
  }

  /** The reason, with what to do about it where that is known. */
  static String andRemedy(IOException e) {
    String reason = of(e);
    return reason.endsWith(FULL) ? reason + "; make room on it and try again" : reason;
  }

  /** As Linux and macOS say it, then as Windows does. */
  private static boolean isFull(String reason) {
    return reason.contains("No space left") || reason.contains("not enough space");
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
      return "it is not an empty folder";
    }
    String reason = Objects.requireNonNullElse(e.getReason(), "the disk gave no reason");
    return isFull(reason) ? FULL : reason;
  }
}
