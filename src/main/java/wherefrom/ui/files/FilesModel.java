package wherefrom.ui.files;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The folders and files that can be gone to from a folder. */
final class FilesModel {

  /** A folder to go to or a file to choose. */
  record Line(Path path, boolean folder, String words) {}

  private final List<String> endings;
  private Path folder;

  /**
   * @param endings of files that can be chosen, in small letters, such as {@code .png}; empty where
   *     a folder is wanted
   */
  FilesModel(Path start, List<String> endings) {
    this.endings = List.copyOf(endings);
    this.folder = nearest(start.toAbsolutePath().normalize());
  }

  private static Path nearest(Path wanted) {
    Path folder = wanted;
    while (!Files.isDirectory(folder)) {
      Path above = folder.getParent();
      if (above == null) {
        return Path.of("").toAbsolutePath();
      }
      folder = above;
    }
    return folder;
  }

  Path folder() {
    return folder;
  }

  void go(Path other) {
    folder = other;
  }

  /**
   * Goes to a folder that was typed, whole or from where one is.
   *
   * @return what is wrong with it, in a sentence; empty where it is there now
   */
  Optional<String> goTyped(String typed) {
    try {
      Path wanted = folder.resolve(typed.strip()).normalize();
      if (Files.isDirectory(wanted)) {
        folder = wanted;
        return Optional.empty();
      }
      Optional<Path> behind = findBehind(typed.strip());
      if (behind.isPresent()) {
        folder = behind.get();
        return Optional.empty();
      }
      return Optional.of("There is no folder " + wanted + ". Check the spelling.");
    } catch (InvalidPathException e) {
      return Optional.of("\"" + typed + "\" is not the name of a folder.");
    }
  }

  /** A whole path that was typed behind the folder that stood there already. */
  private Optional<Path> findBehind(String typed) {
    String stood = folder.toString();
    return typed.startsWith(stood)
        ? Optional.of(Path.of(typed.substring(stood.length()).strip()))
            .filter(Path::isAbsolute)
            .map(Path::normalize)
            .filter(Files::isDirectory)
        : Optional.empty();
  }

  /** What is said of a folder that holds nothing to go to or to choose. */
  String whenEmpty() {
    return folder + " holds no folder" + (endings.isEmpty() ? "." : " and no file of this sort.");
  }

  /**
   * Makes a folder here and goes there.
   *
   * @return what is wrong, in a sentence; empty where it was made
   */
  Optional<String> make(String name) {
    try {
      Path fresh = folder.resolve(name.strip()).normalize();
      if (name.isBlank() || !folder.equals(fresh.getParent())) {
        return Optional.of("Give the folder a plain name.");
      }
      folder = Files.createDirectory(fresh);
      return Optional.empty();
    } catch (FileAlreadyExistsException e) {
      return Optional.of("There is a folder or file " + name.strip() + " already.");
    } catch (IOException | InvalidPathException e) {
      return Optional.of("The folder " + name.strip() + " cannot be made here.");
    }
  }

  Optional<Path> findAbove() {
    return Optional.ofNullable(folder.getParent());
  }

  /**
   * The folders first, then the files, by name; what is hidden is left out.
   *
   * @throws IOException when the folder cannot be read
   */
  List<Line> list() throws IOException {
    List<Line> lines = new ArrayList<>();
    try (Stream<Path> inside = Files.list(folder)) {
      inside.filter(path -> !name(path).startsWith(".")).map(this::line).forEach(lines::add);
    }
    lines.removeIf(line -> !line.folder() && !wanted(line.path()));
    lines.sort(
        Comparator.comparing(Line::folder)
            .reversed()
            .thenComparing(Line::words, String.CASE_INSENSITIVE_ORDER));
    return lines;
  }

  private Line line(Path path) {
    return new Line(path, Files.isDirectory(path), name(path));
  }

  private boolean wanted(Path file) {
    String name = name(file).toLowerCase(Locale.ROOT);
    return endings.stream().anyMatch(name::endsWith);
  }

  private static String name(Path path) {
    Path name = path.getFileName();
    return name == null ? path.toString() : name.toString();
  }
}
