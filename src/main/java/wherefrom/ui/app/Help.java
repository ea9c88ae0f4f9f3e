package wherefrom.ui.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What to do now on a screen, in three sentences at most. All of them stand in {@code
 * help.properties}, by the screen's package and the name of its class without its last word. A key
 * stands in brackets there; its sentence is said only where the screen has that key now.
 */
public record Help(List<String> sentences) {
  private static final String FILE = "/wherefrom/ui/help.properties";
  private static final Properties ALL = load();
  private static final Pattern KEY = Pattern.compile("\\[([^\\]]+)\\]");

  public Help {
    sentences = List.copyOf(sentences);
  }

  private static Properties load() {
    try (InputStream file = Objects.requireNonNull(Help.class.getResourceAsStream(FILE))) {
      Properties all = new Properties();
      all.load(new InputStreamReader(file, StandardCharsets.UTF_8));
      return all;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The key of a screen's sentences: {@code inspect.Card} for its card screen. */
  public static String key(Class<? extends Screen> screen) {
    String room = screen.getPackageName().replaceFirst(".*\\.", "");
    return room + "." + screen.getSimpleName().replaceFirst("Screen$", "");
  }

  /** Whether a screen has sentences of its own. */
  public static boolean isWritten(Class<? extends Screen> screen) {
    return ALL.containsKey(key(screen));
  }

  /** The sentences of a screen; those that hold everywhere where it has none of its own. */
  public static Help of(Class<? extends Screen> screen) {
    return of(key(screen));
  }

  /** The sentences of a screen, or of a question on it, by their name in the file. */
  public static Help of(String name) {
    String words = ALL.getProperty(name, ALL.getProperty("default", ""));
    return new Help(
        Stream.of(words.split("\\|", -1)).map(String::strip).filter(s -> !s.isEmpty()).toList());
  }

  /** The keys that a sentence names. */
  public static List<String> keysOf(String sentence) {
    return KEY.matcher(sentence).results().map(found -> found.group(1)).toList();
  }

  /** A sentence as it is read. */
  public static String plain(String sentence) {
    return KEY.matcher(sentence).replaceAll("$1");
  }

  /**
   * What is said where these keys are on the glass; where nothing of it fits, what holds
   * everywhere.
   *
   * @param onGlass the words of each key
   */
  public Help where(Collection<String> onGlass) {
    List<String> said =
        sentences.stream()
            .filter(
                sentence ->
                    keysOf(sentence).stream()
                        .allMatch(key -> onGlass.stream().anyMatch(words -> words.contains(key))))
            .map(Help::plain)
            .toList();
    return said.isEmpty() ? of("default") : new Help(said);
  }
}
