package wherefrom.demo;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import wherefrom.files.Beside;

/** The invented job that comes with the program: worked on as a copy, never changed itself. */
public final class DemoJob {
  /** The number of its engine. */
  public static final int ENGINE = 4_410_274;

  private static final String FOLDER = "demo";
  private static final String ROOT = "/wherefrom/demo/";
  private static final String INDEX = "files.txt";

  private DemoJob() {}

  /**
   * The folder of the copy on a shelf; made where there is none yet.
   *
   * @throws IOException with a plain sentence when it cannot be copied
   */
  public static Path on(Path shelf) throws IOException {
    Path copy = shelf.resolve(FOLDER);
    if (!Files.isDirectory(copy)) {
      copyTo(copy);
    }
    return copy;
  }

  /**
   * Makes a copy in a folder of its own.
   *
   * @param folder must not exist yet
   * @throws FileAlreadyExistsException when something is there
   * @throws IOException with a plain sentence when it cannot be copied
   */
  public static void copyTo(Path folder) throws IOException {
    if (Files.exists(folder)) {
      throw new FileAlreadyExistsException(folder.toString());
    }
    Path around = Optional.ofNullable(folder.toAbsolutePath().getParent()).orElse(folder);
    Files.createDirectories(around);
    // Copied aside and then moved: a copy that broke off is never taken for the whole.
    Path aside = Beside.folder(around, ".demo-");
    Path index = copy(INDEX, aside);
    for (String file : Files.readAllLines(index)) {
      if (!file.isBlank()) {
        copy(file, aside);
      }
    }
    Files.delete(index);
    Files.move(aside, folder);
  }

  private static Path copy(String file, Path folder) throws IOException {
    Path to = folder.resolve(file);
    Files.createDirectories(to.getParent());
    try (InputStream in = open(file)) {
      Files.copy(in, to);
    }
    return to;
  }

  private static InputStream open(String file) throws IOException {
    InputStream in = DemoJob.class.getResourceAsStream(ROOT + file);
    if (in == null) {
      throw new FileNotFoundException("The demo does not come with this program: " + file + ".");
    }
    return in;
  }
}
