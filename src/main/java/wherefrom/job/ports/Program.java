package wherefrom.job.ports;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The program itself: what to say of it when something went wrong.
 *
 * @param version as it was built
 * @param logs the folder with the log of what went wrong
 */
public record Program(String version, Path logs) {
  /** Files of the log; the newest has the lowest number. */
  public static final String LOG_PREFIX = "wherefrom-log-";

  private static final int MEGABYTE = 1_000_000;

  private static final List<String> SYSTEM =
      List.of("os.name", "os.version", "os.arch", "java.version", "java.vm.name", "user.language");

  /** A report for whoever mends the program: version, system, log. Nothing of any job is in it. */
  public String report() {
    StringBuilder text = new StringBuilder("Wherefrom " + version + "\n\nSystem\n");
    for (String property : SYSTEM) {
      text.append(property).append(": ").append(System.getProperty(property, "")).append('\n');
    }
    Runtime runtime = Runtime.getRuntime();
    text.append(
        String.format(
            Locale.ROOT,
            "memory: %d of at most %d MB, processors: %d%n",
            runtime.totalMemory() / MEGABYTE,
            runtime.maxMemory() / MEGABYTE,
            runtime.availableProcessors()));
    text.append("\nLog\n").append(log());
    return text.toString();
  }

  private String log() {
    StringBuilder text = new StringBuilder();
    try {
      for (Path file : files()) {
        text.append(Files.readString(file));
      }
    } catch (IOException e) {
      text.append("The log cannot be read: ").append(e.getMessage()).append('\n');
    }
    return text.isEmpty() ? "nothing was logged\n" : text.toString();
  }

  private List<Path> files() throws IOException {
    if (!Files.isDirectory(logs)) {
      return List.of();
    }
    try (Stream<Path> inside = Files.list(logs)) {
      return inside
          .filter(Files::isRegularFile)
          .filter(file -> String.valueOf(file.getFileName()).startsWith(LOG_PREFIX))
          .filter(file -> !String.valueOf(file.getFileName()).endsWith(".lck"))
          .sorted()
          .toList();
    }
  }
}
