package wherefrom.ui.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import java.util.stream.Stream;

/**
 * What to do now on a screen, in three sentences at most. All of them stand in {@code
 * help.properties}, by the screen's package and the name of its class without its last word.
 */
public record Help(List<String> sentences) {
  private static final String FILE = "/wherefrom/ui/help.properties";
  private static final Properties ALL = load();

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
    String words = ALL.getProperty(key(screen), ALL.getProperty("default", ""));
    return new Help(
        Stream.of(words.split("\\|", -1)).map(String::strip).filter(s -> !s.isEmpty()).toList());
  }
}
