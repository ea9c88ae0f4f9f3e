package wherefrom.phone;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

/** A phone, as far as the door can tell. */
public final class Caller {
  private static final AtomicInteger ACTS = new AtomicInteger();
  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  private final String address;
  private String cookie = "";

  /**
   * @param address of the door, such as {@code http://127.0.0.1:47417}
   */
  public Caller(String address) {
    this.address = address;
  }

  /** An answer of the door. */
  public record Said(int status, String body, HttpResponse<String> whole) {
    public String header(String name) {
      return whole.headers().firstValue(name).orElse("");
    }
  }

  public static String freshAct() {
    return "act-of-a-test-" + String.format("%08d", ACTS.incrementAndGet());
  }

  public Said get(String path) {
    return send(request(path).GET());
  }

  public Said post(String path, String json) {
    return send(
        request(path)
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(json)));
  }

  public Said photo(byte[] picture, Map<String, String> headers) {
    HttpRequest.Builder request =
        request("/photo").POST(HttpRequest.BodyPublishers.ofByteArray(picture));
    headers.forEach(request::header);
    return send(request);
  }

  public Said photo(byte[] picture) {
    return photo(picture, Map.of("Content-Type", "image/jpeg", "X-Act", freshAct()));
  }

  public Said act(String id, String deed, String with) {
    return post("/act", PhoneJson.object(Map.of("id", id, "deed", deed, "with", with)));
  }

  public Said act(String deed, String with) {
    return act(freshAct(), deed, with);
  }

  public Said code(String digits) {
    return act("code", digits);
  }

  /** Joins with the key of a link. */
  public Said join(String link, String name) {
    String key = link.substring(link.indexOf('#') + 1);
    Said said = post("/join", PhoneJson.object(Map.of("key", key, "name", name)));
    cookie = said.header("Set-Cookie").split(";")[0];
    return said;
  }

  String cookie() {
    return cookie;
  }

  void takeCookie(String other) {
    cookie = other;
  }

  private HttpRequest.Builder request(String path) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(address + path)).header("Origin", address);
    return cookie.isEmpty() ? request : request.header("Cookie", cookie);
  }

  static Said send(HttpRequest.Builder request) {
    try {
      HttpResponse<String> answer =
          CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString());
      return new Said(answer.statusCode(), answer.body(), answer);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
