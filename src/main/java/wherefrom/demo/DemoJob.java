package wherefrom.demo;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import wherefrom.files.AtomicFile;
import wherefrom.files.DraftFiles;
import wherefrom.files.Folders;
import wherefrom.files.Progress;

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
    Folders.make(around);
    // Copied aside and then moved: a copy that broke off is never taken for the whole.
    Path aside = DraftFiles.folder(around, ".demo-");
    try {
      copyInto(aside);
      Files.move(aside, folder);
    } finally {
      Folders.remove(aside);
    }
    Folders.force(around);
  }

  /** Each file is forced, and the folder that it lies in. */
  private static void copyInto(Path folder) throws IOException {
    List<String> files = index();
    int done = 0;
    for (String file : files) {
      Progress.step(done++, files.size());
      try (InputStream in = open(file)) {
        new AtomicFile().write(folder.resolve(file), in::transferTo);
      }
    }
  }

  private static List<String> index() throws IOException {
    try (InputStream in = open(INDEX)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.lines().filter(line -> !line.isBlank()).toList();
    }
  }

  private static InputStream open(String file) throws IOException {
    InputStream in = DemoJob.class.getResourceAsStream(ROOT + file);
    if (in == null) {
      throw new FileNotFoundException("The demo does not come with this program: " + file + ".");
    }
    return in;
  }
}
