package wherefrom.logbook;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import wherefrom.job.BuiltVersion;

/** Tells this build of the program from every other. */
final class ProgramStamp {
  /** Files of packages have all the same time, so that the version is told, too. */
  private static final String STAMP = BuiltVersion.get() + " " + of(ProgramStamp.class);

  private ProgramStamp() {}

  static String get() {
    return STAMP;
  }

  /** The size and time of the file that the program came in; of its folder where it is in none. */
  private static String of(Class<?> type) {
    CodeSource source = type.getProtectionDomain().getCodeSource();
    if (source == null) {
      return "";
    }
    try {
      Path file = Path.of(source.getLocation().toURI());
      return Files.size(file) + " " + Files.getLastModifiedTime(file);
    } catch (IOException
        | URISyntaxException
        | IllegalArgumentException
        | FileSystemNotFoundException e) {
      return source.getLocation().toString();
    }
  }
}
