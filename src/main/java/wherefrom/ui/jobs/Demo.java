package wherefrom.ui.jobs;

import java.io.BufferedReader;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The invented job that comes with the program: worked on as a copy, never changed itself. */
final class Demo {
  static final String FOLDER = "demo";
  private static final String ROOT = "/wherefrom/demo/";
  private static final String INDEX = "files.txt";

  private Demo() {}

  /**
   * The folder of the copy on a shelf; made where there is none yet.
   *
   * @throws IOException with a plain sentence when it cannot be copied
   */
  static Path on(Path shelf) throws IOException {
    Path copy = shelf.resolve(FOLDER);
    if (Files.isDirectory(copy)) {
      return copy;
    }
    // Copied aside and then moved: a copy that broke off is never taken for the whole.
    Files.createDirectories(shelf);
    Path aside = Files.createTempDirectory(shelf, ".demo-");
    for (String file : files()) {
      Path to = aside.resolve(file);
      Files.createDirectories(to.getParent());
      try (InputStream in = open(file)) {
        Files.copy(in, to);
      }
    }
    return Files.move(aside, copy);
  }

  private static List<String> files() throws IOException {
    try (BufferedReader lines =
        new BufferedReader(new InputStreamReader(open(INDEX), StandardCharsets.UTF_8))) {
      return lines.lines().filter(line -> !line.isBlank()).toList();
    }
  }

  private static InputStream open(String file) throws IOException {
    InputStream in = Demo.class.getResourceAsStream(ROOT + file);
    if (in == null) {
      throw new FileNotFoundException("The demo does not come with this program: " + file + ".");
    }
    return in;
  }
}
