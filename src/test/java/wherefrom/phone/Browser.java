package wherefrom.phone;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/** Debian's Chromium as a phone: small glass, touch. It is driven as W3C's WebDriver says. */
final class Browser implements AutoCloseable {
  private static final List<String> PLACES = List.of("/usr/bin", "/usr/local/bin");
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String ELEMENT = "element-6066-11e4-a52e-4f735466cecf";
  private static final Duration PATIENCE = Duration.ofSeconds(15);

  /** No wait for anything to happen: by its own clock the page takes no second touch in 0.4 s. */
  private static final String TAKES_A_TOUCH = "setTimeout(arguments[0], 420);";

  private final HttpClient client = HttpClient.newHttpClient();
  private final Process driver;
  private final String session;

  private Browser(Process driver, String session) {
    this.driver = driver;
    this.session = session;
  }

  /** Whether it is installed. */
  static boolean isThere() {
    return List.of("chromium", "chromedriver").stream().allMatch(Browser::isInstalled);
  }

  private static boolean isInstalled(String name) {
    return PLACES.stream().anyMatch(place -> Files.isExecutable(Path.of(place, name)));
  }

  /**
   * Opens a phone.
   *
   * @param width of its glass, in the pixels of style sheets
   * @param profile a folder for what the browser keeps
   */
  static Browser open(int width, int height, boolean dark, Path profile) throws IOException {
    Process driver =
        new ProcessBuilder("chromedriver", "--port=0").redirectErrorStream(true).start();
    String port = port(driver);
    Map<String, Object> glass =
        Map.of("width", width, "height", height, "pixelRatio", 2, "touch", true);
    List<String> words =
        List.of(
            "--headless=new",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-dev-shm-usage",
            "--no-first-run",
            "--user-data-dir=" + profile);
    Map<String, Object> options =
        Map.of("args", words, "mobileEmulation", Map.of("deviceMetrics", glass));
    Browser starting = new Browser(driver, "http://127.0.0.1:" + port + "/session");
    JsonNode made =
        starting.post(
            "",
            Map.of(
                "capabilities",
                Map.of(
                    "alwaysMatch",
                    Map.of("browserName", "chrome", "goog:chromeOptions", options))));
    Browser browser = new Browser(driver, starting.session + "/" + made.get("sessionId").asText());
    browser.dark(dark);
    return browser;
  }

  private static String port(Process driver) throws IOException {
    BufferedReader said =
        new BufferedReader(new InputStreamReader(driver.getInputStream(), StandardCharsets.UTF_8));
    for (String line = said.readLine(); line != null; line = said.readLine()) {
      if (line.contains("started successfully on port ")) {
        return line.replaceAll(".*on port ([0-9]+).*", "$1");
      }
    }
    throw new IOException("chromedriver did not start");
  }

  private JsonNode post(String path, Object body) throws IOException {
    return send(
        HttpRequest.newBuilder(URI.create(session + path))
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(JSON.writeValueAsString(body))));
  }

  private JsonNode get(String path) throws IOException {
    return send(HttpRequest.newBuilder(URI.create(session + path)).GET());
  }

  private JsonNode send(HttpRequest.Builder request) throws IOException {
    try {
      HttpResponse<String> answer =
          client.send(
              request.timeout(Duration.ofSeconds(60)).build(),
              HttpResponse.BodyHandlers.ofString());
      JsonNode value = JSON.readTree(answer.body()).get("value");
      if (answer.statusCode() != 200) {
        throw new IOException(value.path("error").asText() + ": " + value.path("message").asText());
      }
      return value;
    } catch (InterruptedException e) {
      throw new IOException(e);
    }
  }

  private void devTools(String command, Map<String, Object> parameters) throws IOException {
    post("/goog/cdp/execute", Map.of("cmd", command, "params", parameters));
  }

  private void dark(boolean dark) throws IOException {
    Map<String, String> look =
        Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light");
    devTools("Emulation.setEmulatedMedia", Map.of("features", List.of(look)));
  }

  /** Takes the network away, or gives it back. */
  void connect(boolean connected) throws IOException {
    devTools("Network.enable", Map.of());
    devTools(
        "Network.emulateNetworkConditions",
        Map.of(
            "offline", !connected, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
  }

  void go(String link) throws IOException {
    post("/url", Map.of("url", link));
  }

  void reload() throws IOException {
    post("/refresh", Map.of());
  }

  /** What a script gives. */
  JsonNode run(String script, Object... words) throws IOException {
    return post("/execute/sync", Map.of("script", script, "args", Arrays.asList(words)));
  }

  private String element(String css) throws IOException {
    return post("/element", Map.of("using", "css selector", "value", css)).get(ELEMENT).asText();
  }

  /** Touches the middle of what a selector finds, for so long. */
  void touch(String css, int ms) throws IOException {
    waitFor(css + " to be touched", () -> is(css));
    Map<String, Object> at =
        Map.of(
            "type",
            "pointerMove",
            "duration",
            0,
            "x",
            0,
            "y",
            0,
            "origin",
            Map.of(ELEMENT, element(css)));
    List<Map<String, Object>> moves =
        List.of(
            at,
            Map.of("type", "pointerDown", "button", 0),
            Map.of("type", "pause", "duration", ms),
            Map.of("type", "pointerUp", "button", 0));
    Map<String, Object> finger =
        Map.of(
            "type",
            "pointer",
            "id",
            "finger",
            "parameters",
            Map.of("pointerType", "touch"),
            "actions",
            moves);
    post("/actions", Map.of("actions", List.of(finger)));
  }

  void touch(String css) throws IOException {
    later(TAKES_A_TOUCH);
    touch(css, 60);
  }

  /** Touches the key with these words. */
  void press(String words) throws IOException {
    String mark = "test-" + Math.abs(words.hashCode());
    waitFor("the key " + words, () -> mark(words, mark));
    touch("." + mark);
  }

  void hold(String words) throws IOException {
    String mark = "test-" + Math.abs(words.hashCode());
    waitFor("the key " + words, () -> mark(words, mark));
    touch("." + mark, 1_800);
  }

  private boolean mark(String words, String mark) {
    try {
      return run(
              "const key = Array.from(document.querySelectorAll('button, label'))"
                  + ".find(one => one.offsetParent && one.innerText.trim().startsWith(arguments[0]));"
                  + "document.querySelectorAll('.' + arguments[1])"
                  + ".forEach(one => one.classList.remove(arguments[1]));"
                  + "if (key) { key.classList.add(arguments[1]); } return Boolean(key);",
              words,
              mark)
          .asBoolean();
    } catch (IOException e) {
      return false;
    }
  }

  /** Whether what a selector finds is seen. */
  boolean is(String css) {
    try {
      return run(
              "const one = document.querySelector(arguments[0]);"
                  + "return Boolean(one && one.offsetParent);",
              css)
          .asBoolean();
    } catch (IOException e) {
      return false;
    }
  }

  /** The camera takes this picture for a file input. */
  void photograph(String css, Path picture) throws IOException {
    post(
        "/element/" + element(css) + "/value", Map.of("text", picture.toAbsolutePath().toString()));
  }

  void type(String css, String words) throws IOException {
    post("/element/" + element(css) + "/value", Map.of("text", words));
  }

  /** All that is seen, on one line. */
  String seen() throws IOException {
    return run("return document.body.innerText;").asText().replaceAll("\\s+", " ").strip();
  }

  /** Waits until these words are seen. */
  void waitForWords(String words) throws IOException {
    waitFor(
        "\"" + words + "\"",
        () -> {
          try {
            return seen().contains(words);
          } catch (IOException e) {
            return false;
          }
        });
  }

  private void waitFor(String what, BooleanSupplier there) throws IOException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (!there.getAsBoolean()) {
      if (System.nanoTime() > end) {
        throw new AssertionError(what + " did not come; seen: " + seen());
      }
      awaitChange();
    }
  }

  /** Waits until the page changes, or is drawn twice more; a page that is going answers at once. */
  private void awaitChange() {
    try {
      later(
          "const done = arguments[0];"
              + "const watch = new MutationObserver(() => { watch.disconnect(); done(true); });"
              + "watch.observe(document, {subtree: true, childList: true, attributes: true,"
              + " characterData: true});"
              + "requestAnimationFrame(() => requestAnimationFrame("
              + "() => { watch.disconnect(); done(false); }));");
    } catch (IOException going) {
      Thread.onSpinWait();
    }
  }

  /** Runs a script that says when it is done. */
  private void later(String script) throws IOException {
    post("/execute/async", Map.of("script", script, "args", List.of()));
  }

  void picture(Path png) throws IOException {
    Files.write(png, Base64.getDecoder().decode(get("/screenshot").asText()));
  }

  @Override
  public void close() throws IOException {
    try {
      send(HttpRequest.newBuilder(URI.create(session)).DELETE());
    } finally {
      driver.descendants().forEach(ProcessHandle::destroy);
      driver.destroy();
    }
  }
}
