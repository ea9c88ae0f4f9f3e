package wherefrom.phone;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What is sent back.
 *
 * @param status of HTTP
 * @param type of the body
 * @param headers besides those that every answer has
 */
@SuppressWarnings("ArrayRecordComponent") // copied in and out
record Response(int status, String type, byte[] body, Map<String, String> headers) {
  static final String JSON = "application/json";
  private static final int OK = 200;

  Response {
    body = body.clone();
    headers = Map.copyOf(headers);
  }

  @Override
  public byte[] body() {
    return body.clone();
  }

  static Response json(String text) {
    return json(OK, text);
  }

  static Response json(int status, String text) {
    return new Response(status, JSON, text.getBytes(StandardCharsets.UTF_8), Map.of());
  }

  /** Something to tell the person, where nothing was done. */
  static Response said(int status, String sentence) {
    return json(status, PhoneJson.object(Map.of("said", sentence)));
  }

  Response with(String header, String value) {
    Map<String, String> all = new LinkedHashMap<>(headers);
    all.put(header, value);
    return new Response(status, type, body, all);
  }
}
