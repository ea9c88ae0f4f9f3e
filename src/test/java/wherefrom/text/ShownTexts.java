package wherefrom.text;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The texts in the program's own sources, those that are joined with a plus as one. */
final class ShownTexts {
  static final Path SOURCES = Path.of("src", "main", "java", "wherefrom");

  /** It never steps back into a text: on a long one that would take a stack as deep. */
  private static final Pattern TOKEN =
      Pattern.compile(
          "//[^\\n]*|/\\*[\\s\\S]*?\\*/|'(?:\\\\.|[^'\\\\])++'|\"(?<text>(?:\\\\.|[^\"\\\\\\n])*+)\"");

  private static final Pattern JOIN = Pattern.compile("\\s*\\+\\s*");

  private ShownTexts() {}

  /**
   * A text.
   *
   * @param file its source file, from {@link #SOURCES}
   */
  record Shown(String file, String text) {
    /** Whether it is more than a key, a unit or a format. */
    boolean isWords() {
      return text.contains(" ") || Character.isUpperCase((text + " ").charAt(0));
    }
  }

  /** Those of some packages, or of all where none is named. */
  static List<Shown> in(String... packages) {
    List<Path> roots =
        packages.length == 0
            ? List.of(SOURCES)
            : Stream.of(packages).map(each -> SOURCES.resolve(each)).toList();
    return roots.stream().flatMap(ShownTexts::files).flatMap(ShownTexts::texts).toList();
  }

  private static Stream<Path> files(Path root) {
    try (Stream<Path> all = Files.walk(root)) {
      return all.filter(file -> file.toString().endsWith(".java")).sorted().toList().stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Stream<Shown> texts(Path file) {
    String name = SOURCES.relativize(file).toString().replace('\\', '/');
    return texts(read(file)).stream().map(text -> new Shown(name, text));
  }

  static List<String> texts(String source) {
    List<String> texts = new ArrayList<>();
    int last = -1;
    for (Matcher at = TOKEN.matcher(source); at.find(); ) {
      String text = at.group("text");
      if (text == null) {
        continue;
      }
      boolean joined = last >= 0 && JOIN.matcher(source.substring(last, at.start())).matches();
      texts.add(joined ? texts.remove(texts.size() - 1) + text : text);
      last = at.end();
    }
    return texts;
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
