package wherefrom;

import java.nio.file.Path;

/**
 * Tells the libraries where to unpack what they cannot use as it is: without this each makes a
 * folder of its own in the person's home folder. To be called before any of them is used.
 */
final class Caches {
  private Caches() {}

  /**
   * @param folder may not exist yet; is made when it is first needed
   */
  static void in(Path folder) {
    unlessSet("javafx.cachedir", folder.resolve("javafx"));
    unlessSet("org.bytedeco.javacpp.cachedir", folder.resolve("javacpp"));
    unlessSet("pdfbox.fontcache", folder.resolve("pdfbox"));
  }

  private static void unlessSet(String property, Path folder) {
    if (System.getProperty(property, "").isBlank()) {
      System.setProperty(property, folder.toString());
    }
  }
}
