package wherefrom;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;

/** The version that the program was built as. */
final class Version {
  private static final String FILE = "version.properties";

  private Version() {}

  static String read() {
    Properties properties = new Properties();
    try (InputStream in = Version.class.getResourceAsStream(FILE)) {
      if (in != null) {
        properties.load(in);
      }
    } catch (IOException e) {
      return "unknown";
    }
    String version = properties.getProperty("version", "");
    return version.isEmpty() || version.startsWith("$") ? "unknown" : version;
  }
}
