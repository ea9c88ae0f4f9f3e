package wherefrom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every type, member, package and file that DEVELOPERS.md names is there under that name. */
class DeveloperNamesTest {
  private static final Path TEXT = Path.of("DEVELOPERS.md");
  private static final List<Path> ROOTS =
      List.of(Path.of("src", "main", "java"), Path.of("src", "test", "java"));

  /** What stands for any name of its kind. */
  private static final String ANY = "Xxx";

  private static final Pattern CODE = Pattern.compile("`([^`\n]+)`");
  private static final Pattern LINK = Pattern.compile("\\]\\(([^)#:]+)\\)");
  private static final Pattern NAME =
      Pattern.compile("((?:[a-z]+\\.)*)([A-Z]\\w*)((?:\\.\\w+)*)(?:\\(\\))?");
  private static final Pattern FILE =
      Pattern.compile("[\\w-]+\\.(?:txt|properties|css|md|sh|xml|json|jsonl|java)");
  private static final Pattern PATH = Pattern.compile("[\\w.-]+(?:/[\\w.-]+)+/?");
  private static final Pattern PACKAGE = Pattern.compile("[a-z]+(?:\\.[a-z]+)+");

  /** What a build makes, or stands in the package alone. */
  private static final Set<String> MADE = Set.of("target", "META-INF");

  private static final Map<String, String> SOURCES = sources();

  private static Map<String, String> sources() {
    Map<String, String> texts = new HashMap<>();
    for (Path root : ROOTS) {
      try (Stream<Path> files = Files.walk(root)) {
        for (Path file : files.filter(one -> one.toString().endsWith(".java")).toList()) {
          texts.put(key(root.relativize(file)), Files.readString(file));
        }
      } catch (IOException e) {
        throw new IllegalStateException(e);
      }
    }
    return texts;
  }

  /** {@code wherefrom.rules.Verdict}. */
  private static String key(Path file) {
    String path = file.toString().replace(file.getFileSystem().getSeparator(), ".");
    return path.substring(0, path.length() - ".java".length());
  }

  private static Set<String> named(Pattern around) throws IOException {
    return around
        .matcher(Files.readString(TEXT))
        .results()
        .map(found -> found.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<Matcher> matches(Pattern pattern) throws IOException {
    return named(CODE).stream().map(pattern::matcher).filter(Matcher::matches).toList();
  }

  private static List<String> missing(Stream<String> names, Predicate<String> isThere) {
    return names.filter(isThere.negate()).toList();
  }

  @Test
  void everyTypeAndMemberIsThere() throws IOException {
    List<String> names = new ArrayList<>();
    for (Matcher name : matches(NAME)) {
      if (!name.group(2).startsWith(ANY)) {
        names.add(name.group());
      }
    }
    assertThat(names).hasSizeGreaterThan(150);
    assertThat(missing(names.stream(), DeveloperNamesTest::isThere)).isEmpty();
  }

  private static boolean isThere(String named) {
    Matcher name = NAME.matcher(named);
    assertThat(name.matches()).isTrue();
    String type = name.group(2);
    List<String> texts = texts(name.group(1), type);
    return texts.isEmpty()
        ? name.group(1).isEmpty() && name.group(3).isEmpty() && isAnywhere(type)
        : Stream.of(name.group(3).split("\\."))
            .allMatch(member -> texts.stream().anyMatch(text -> hasWord(text, member)));
  }

  /** The sources of the types of this name; a package that is named must be theirs. */
  private static List<String> texts(String room, String type) {
    String end = "." + room + type;
    return SOURCES.entrySet().stream()
        .filter(source -> ("." + source.getKey()).endsWith(end))
        .map(Map.Entry::getValue)
        .toList();
  }

  private static boolean hasWord(String text, String word) {
    return Pattern.compile("\\b" + word + "\\b").matcher(text).find();
  }

  /** A nested type, a constant, or a type of Java's own. */
  private static boolean isAnywhere(String word) {
    return SOURCES.values().stream().anyMatch(text -> hasWord(code(text), word)) || isOfJava(word);
  }

  /** A word in a sentence that is shown is no name. */
  private static String code(String text) {
    return text.replaceAll("\"(?:[^\"\\\\\n]|\\\\.)*+\"", "\"\"");
  }

  private static boolean isOfJava(String word) {
    return Stream.of("java.lang.", "java.util.")
        .anyMatch(
            room -> ClassLoader.getPlatformClassLoader().getResource(file(room + word)) != null);
  }

  private static String file(String type) {
    return type.replace('.', '/') + ".class";
  }

  @Test
  void everyPackageIsThere() throws IOException {
    List<String> names = matches(PACKAGE).stream().map(Matcher::group).toList();
    assertThat(names).hasSizeGreaterThan(20);
    assertThat(
            missing(
                names.stream()
                    .filter(name -> !FILE.matcher(name).matches() && !name.startsWith("java")),
                this::isRoom))
        .isEmpty();
  }

  private boolean isRoom(String name) {
    String path = name.replaceFirst("^wherefrom\\.", "").replace('.', '/');
    return ROOTS.stream().anyMatch(root -> Files.isDirectory(root.resolve("wherefrom/" + path)));
  }

  @Test
  void everyFileIsThere() throws IOException {
    List<String> paths = new ArrayList<>(named(LINK));
    matches(PATH).forEach(path -> paths.add(path.group()));
    paths.removeIf(path -> MADE.contains(path.substring(0, path.indexOf('/'))));
    assertThat(paths).hasSizeGreaterThan(7);
    assertThat(missing(paths.stream(), path -> Files.exists(Path.of(path)))).isEmpty();
    List<String> names = matches(FILE).stream().map(Matcher::group).toList();
    assertThat(names).hasSizeGreaterThan(5);
    assertThat(names).isSubsetOf(fileNames());
  }

  private static Set<String> fileNames() throws IOException {
    try (Stream<Path> inTree = Files.walk(Path.of("src"));
        Stream<Path> atTop = Files.list(Path.of(""))) {
      return Stream.concat(inTree, atTop)
          .map(file -> file.getFileName().toString())
          .collect(Collectors.toSet());
    }
  }
}
