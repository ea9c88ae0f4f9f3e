package wherefrom;

import java.net.URI;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.Optional;

/**
 * Where the program's own file lies. Java takes {@code !/} in a path for the end of the jar, so
 * that in a folder whose name ends with an exclamation mark nothing inside of it is found: no font,
 * no label stock, no window.
 */
final class JarPlace {
  private static final String END = "!/";

  private JarPlace() {}

  /**
   * Why the program cannot work where it lies, in a sentence; empty where it can. As a module of
   * its own runtime it lies in no jar.
   */
  static Optional<String> findFault() {
    if (JarPlace.class.getModule().isNamed()) {
      return Optional.empty();
    }
    return Optional.ofNullable(JarPlace.class.getProtectionDomain().getCodeSource())
        .map(CodeSource::getLocation)
        .map(location -> URI.create(location.toString()).getPath())
        .flatMap(JarPlace::findFault);
  }

  static Optional<String> findFault(String path) {
    int end = path.indexOf(END);
    return end < 0 || !path.endsWith(".jar")
        ? Optional.empty()
        : Optional.of(
            "Wherefrom lies in the folder \""
                + Path.of(path.substring(0, end + 1)).getFileName()
                + "\". Java finds nothing in a folder whose name ends with \"!\": rename it, or"
                + " move Wherefrom.");
  }
}
