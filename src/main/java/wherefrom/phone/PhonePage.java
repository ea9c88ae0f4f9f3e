package wherefrom.phone;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;

/** The page that a phone sees. Its files stand in a table: nothing else can be asked for. */
final class PhonePage {
  /** A file of the program, never of the disk. */
  private record Part(String resource, String type) {}

  private static final Map<String, Part> PARTS =
      Map.of(
          "/", new Part("/wherefrom/phone/phone.html", "text/html; charset=utf-8"),
          "/phone.js", new Part("/wherefrom/phone/phone.js", "text/javascript; charset=utf-8"),
          "/phone.css", new Part("/wherefrom/phone/phone.css", "text/css; charset=utf-8"),
          "/regular.ttf", new Part("/wherefrom/fonts/B612-Regular.ttf", "font/ttf"),
          "/bold.ttf", new Part("/wherefrom/fonts/B612-Bold.ttf", "font/ttf"));

  private PhonePage() {}

  /** What stands at a path; empty where nothing does. */
  static Optional<Response> find(String path) {
    return Optional.ofNullable(PARTS.get(path))
        .map(part -> new Response(200, part.type(), bytes(part.resource()), Map.of()));
  }

  private static byte[] bytes(String resource) {
    try (InputStream in = PhonePage.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException(resource + " is not in the program");
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
