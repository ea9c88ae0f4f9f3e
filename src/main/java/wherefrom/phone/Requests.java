package wherefrom.phone;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Every request: what it may ask for, what is read of it, and how it is answered. */
final class Requests implements HttpHandler {
  private static final Logger LOGGER = Logger.getLogger("wherefrom");
  private static final int NOT_FOUND = 404;
  private static final int TOO_MANY = 429;
  private static final List<String> PICTURES = List.of("image/jpeg", "image/png");
  private static final List<String> WORDS = List.of(Response.JSON);
  private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF};
  private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G'};

  /** On every answer: nothing from elsewhere, nothing within others' pages, nothing kept. */
  private static final Map<String, String> ALWAYS =
      Map.of(
          "Content-Security-Policy",
          "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self';"
              + " connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
          "X-Content-Type-Options",
          "nosniff",
          "Referrer-Policy",
          "no-referrer",
          "X-Frame-Options",
          "DENY",
          "Cross-Origin-Resource-Policy",
          "same-origin",
          "Cross-Origin-Opener-Policy",
          "same-origin",
          "Cache-Control",
          "no-store");

  private final Gate gate;
  private final Limits limits;
  private final Entrance entrance;
  private final PhoneActions desk;
  private final Sessions sessions;
  private final Buckets strangers;
  private final Deadlines deadlines;
  private final Runnable left;

  /**
   * @param left is run when a phone has gone by itself
   */
  Requests(
      Gate gate,
      Limits limits,
      Entrance entrance,
      PhoneActions desk,
      Sessions sessions,
      Deadlines deadlines,
      Runnable left) {
    this.gate = gate;
    this.limits = limits;
    this.entrance = entrance;
    this.desk = desk;
    this.sessions = sessions;
    this.deadlines = deadlines;
    this.strangers = new Buckets(limits, deadlines.nanos());
    this.left = left;
  }

  @Override
  public void handle(HttpExchange request) {
    try (request) {
      send(request, answer(request));
    } catch (IOException e) {
      // The phone has gone: it sends the act again when it is back.
      LOGGER.log(Level.FINE, "A phone has gone", e);
    }
  }

  private Response answer(HttpExchange request) throws IOException {
    try {
      return taken(request);
    } catch (Refused refused) {
      return refused.answer().with("Connection", "close");
    } catch (IOException gone) {
      throw gone;
    } catch (InterruptedException closing) {
      Thread.currentThread().interrupt();
      return Response.said(503, "Not done. The big screen lets no phone in any more.");
    } catch (Exception fault) {
      LOGGER.log(Level.SEVERE, "A phone's request failed", fault);
      return Response.said(500, "Something went wrong. Look at the big screen.");
    }
  }

  private Response taken(HttpExchange request) throws Exception {
    Optional<Session> phone = Gate.findCookie(request.getRequestHeaders()).flatMap(sessions::find);
    boolean may =
        phone
            .map(one -> one.take(deadlines.nanos().getAsLong()))
            .orElseGet(() -> strangers.take(address(request)));
    if (!may) {
      throw new Refused(TOO_MANY, "Too much at once. Wait a moment.");
    }
    gate.pass(request);
    String path = request.getRequestURI().getRawPath();
    return switch (request.getRequestMethod()) {
      case "GET" -> got(path, phone);
      case "POST" -> posted(path, request, phone);
      default -> throw new Refused(405, "That is not understood here.");
    };
  }

  private Response got(String path, Optional<Session> phone) throws Exception {
    if (path.equals("/state")) {
      return desk.state(joined(phone));
    }
    return PhonePage.find(path).orElseThrow(Requests::notFound);
  }

  private Response posted(String path, HttpExchange request, Optional<Session> phone)
      throws Exception {
    return switch (path) {
      case "/hello" -> entrance.hello(words(request), address(request));
      case "/join" -> entrance.join(words(request), address(request));
      case "/act" -> desk.act(joined(phone), words(request));
      case "/photo" -> photo(joined(phone), request);
      case "/leave" -> leave(joined(phone));
      default -> throw notFound();
    };
  }

  private static Refused notFound() {
    return new Refused(NOT_FOUND, "There is nothing here.");
  }

  private static Session joined(Optional<Session> phone) throws Refused {
    return phone.orElseThrow(Refused::notJoined);
  }

  private static String address(HttpExchange request) {
    return request.getRemoteAddress().getAddress().getHostAddress();
  }

  private Response leave(Session phone) {
    sessions.remove(phone.number());
    left.run();
    return Response.json("{}");
  }

  private Map<String, String> words(HttpExchange request) throws IOException, Refused {
    Headers head = request.getRequestHeaders();
    Gate.requireType(head, WORDS);
    Body.announced(Gate.lengths(head), limits.words());
    try (Deadlines.Running due = deadlines.begin(request)) {
      return PhoneJson.read(new Body(request.getRequestBody(), due::isLate).words(limits.words()));
    }
  }

  private Response photo(Session phone, HttpExchange request) throws Exception {
    Headers head = request.getRequestHeaders();
    Gate.requireType(head, PICTURES);
    Body.announced(Gate.lengths(head), limits.picture());
    Path picture = aside();
    try {
      take(request, picture);
      String act = Gate.one(head, "X-Act");
      String keep = Gate.one(head, "X-Keep");
      return keep.isEmpty() ? desk.read(phone, act, picture) : desk.keep(phone, act, keep, picture);
    } finally {
      Files.deleteIfExists(picture);
    }
  }

  /** Where the picture lies until it is read. */
  private static Path aside() throws Refused {
    try {
      return Files.createTempFile("wherefrom-", ".picture");
    } catch (IOException full) {
      throw Body.noRoom();
    }
  }

  private void take(HttpExchange request, Path picture) throws IOException, Refused {
    long count;
    try (Deadlines.Running due = deadlines.begin(request);
        OutputStream out = Files.newOutputStream(picture)) {
      count = new Body(request.getRequestBody(), due::isLate).copy(out, limits.picture());
    }
    Body.requireWhole(Gate.lengths(request.getRequestHeaders()), count);
    try (InputStream in = Files.newInputStream(picture)) {
      byte[] start = in.readNBytes(PNG.length);
      if (!Arrays.equals(start, PNG) && !Arrays.equals(Arrays.copyOf(start, JPEG.length), JPEG)) {
        throw new Refused(415, "That is not a JPEG picture. Nothing was done.");
      }
    }
  }

  private static void send(HttpExchange request, Response answer) throws IOException {
    Headers head = request.getResponseHeaders();
    ALWAYS.forEach(head::set);
    head.set("Content-Type", answer.type());
    answer.headers().forEach(head::set);
    byte[] body = answer.body();
    if (request.getRequestMethod().equals("HEAD")) {
      request.sendResponseHeaders(answer.status(), -1);
      return;
    }
    request.sendResponseHeaders(answer.status(), body.length);
    try (OutputStream out = request.getResponseBody()) {
      out.write(body);
    }
  }
}
