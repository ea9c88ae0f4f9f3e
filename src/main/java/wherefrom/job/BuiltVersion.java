package wherefrom.job;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;

/** The version that the program was built as: what it says of itself on screen and on paper. */
public final class BuiltVersion {
  private static final String FILE = "/wherefrom/version.properties";
  private static final String UNKNOWN = "unknown";
  private static final String VERSION = read();

  private BuiltVersion() {}

  /**
   * Such as {@code 1.0.0}; {@code unknown} where the classes were not put together by the build.
   */
  public static String get() {
    return VERSION;
  }

  /** Such as {@code Wherefrom 1.0.0}, for the foot of a page. */
  public static String words() {
    return VERSION.equals(UNKNOWN) ? "Wherefrom" : "Wherefrom " + VERSION;
  }

  private static String read() {
    Properties properties = new Properties();
    try (InputStream in = BuiltVersion.class.getResourceAsStream(FILE)) {
      if (in != null) {
        properties.load(in);
      }
    } catch (IOException e) {
      return UNKNOWN;
    }
    String version = properties.getProperty("version", "");
    return version.isEmpty() || version.startsWith("$") ? UNKNOWN : version;
  }
}
