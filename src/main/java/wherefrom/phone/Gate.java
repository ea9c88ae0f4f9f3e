package wherefrom.phone;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a request must be before anything is done with it: for this very address, from our own page,
 * for a path without tricks.
 *
 * @param host the address and the port, as the page has them
 */
record Gate(String host) {
  static final String COOKIE = "wherefrom";
  private static final int FORBIDDEN = 403;
  private static final int BAD = 400;

  /**
   * Lets a request through.
   *
   * @throws Refused where it is none of ours
   */
  void pass(HttpExchange request) throws Refused {
    Headers head = request.getRequestHeaders();
    if (!all(head, "Host").equals(List.of(host))) {
      throw new Refused(FORBIDDEN, "This page is found at another address.");
    }
    URI asked = request.getRequestURI();
    if (asked.isAbsolute() || asked.getRawAuthority() != null || asked.getRawQuery() != null) {
      throw new Refused(BAD, "That is not understood here.");
    }
    boolean does = request.getRequestMethod().equals("POST");
    if (does && !all(head, "Origin").equals(List.of("http://" + host))) {
      throw new Refused(FORBIDDEN, "Another page cannot do this.");
    }
    List<String> from = all(head, "Sec-Fetch-Site");
    if (does && !from.isEmpty() && !from.equals(List.of("same-origin"))) {
      throw new Refused(FORBIDDEN, "Another page cannot do this.");
    }
  }

  private static List<String> all(Headers head, String name) {
    List<String> values = head.get(name);
    return values == null ? List.of() : values;
  }

  /** The phone's cookie; empty where it has none, or several. */
  static Optional<String> findCookie(Headers head) {
    List<String> found = new ArrayList<>();
    for (String line : all(head, "Cookie")) {
      for (String one : line.split(";", -1)) {
        if (one.strip().startsWith(COOKIE + "=")) {
          found.add(one.strip().substring(COOKIE.length() + 1));
        }
      }
    }
    return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
  }

  /**
   * Wants a body of one of these types.
   *
   * @throws Refused where it is of another
   */
  static void requireType(Headers head, List<String> types) throws Refused {
    List<String> type = all(head, "Content-Type");
    if (type.size() != 1 || !types.contains(type.get(0))) {
      throw new Refused(415, "That kind of file is not taken here. Use JPEG.");
    }
    if (head.containsKey("Content-Encoding")) {
      throw new Refused(415, "That is not understood here.");
    }
  }

  /** The one value of a header; empty where there is none, or several. */
  static String one(Headers head, String name) {
    List<String> values = all(head, name);
    return values.size() == 1 ? values.get(0) : "";
  }

  static List<String> lengths(Headers head) {
    return all(head, "Content-Length");
  }
}
