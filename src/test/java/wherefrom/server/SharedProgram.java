package wherefrom.server;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import wherefrom.job.By;
import wherefrom.job.settings.ServerAddress;

/** A bench as a program of its own, to be killed: it writes down what it has shown as done. */
final class SharedProgram {
  private SharedProgram() {}

  /**
   * @param arguments the address, the names of the jobs with commas between, the bench, the seed,
   *     how many scans, the file for what was shown
   */
  public static void main(String[] arguments) {
    Path file = Path.of(arguments[5]);
    int bench = Integer.parseInt(arguments[2]);
    try (Worker worker =
        new Worker(
            ServerAddress.read(arguments[0]),
            List.of(arguments[1].split(",")),
            new By(bench, "w" + bench),
            Long.parseLong(arguments[3]),
            file.resolveSibling("cache"),
            shown -> write(file, shown.line() + "\n"))) {
      worker.work(Integer.parseInt(arguments[4]));
      Path folded = file.resolveSibling("folded-" + bench);
      worker.folded().forEach(each -> write(folded, each.line() + "\n"));
    }
  }

  private static void write(Path file, String line) {
    try {
      Files.write(
          file,
          line.getBytes(StandardCharsets.UTF_8),
          StandardOpenOption.CREATE,
          StandardOpenOption.APPEND);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
