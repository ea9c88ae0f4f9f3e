package wherefrom.phone;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.job.phone.Phones;
import wherefrom.phone.Caller.Said;
import wherefrom.scan.grease.PhotographFiles;

/** What somebody on the same network may try, each with what the door does about it. */
class DoorAttacksTest extends DoorBench {
  private static final int LONG_AGO_HOURS = 4;
  private static final SecureRandom RANDOM = new SecureRandom();

  private final AtomicLong later = new AtomicLong();
  private Limits limits = Limits.USUAL;
  private Caller phone;

  @Override
  Phones phones() {
    return new HttpPhones(() -> System.nanoTime() + later.get(), RANDOM::nextBytes, limits);
  }

  @BeforeEach
  void call() {
    phone = new Caller(door.address());
  }

  private void reopen(Limits others) throws IOException {
    door.close();
    limits = others;
    open();
    call();
  }

  private void wait(Duration time) {
    later.addAndGet(time.toNanos());
  }

  private String address() {
    return door.address().substring("http://".length());
  }

  private void joinFirst() {
    assertThat(phone.join(link(), "Anna").status()).isEqualTo(200);
  }

  /** The digits of a part at its place put the part in: what an attack must not bring about. */
  private String out() {
    return sample.tag("pushrod@3EX");
  }

  // Guessing.

  @Test
  void aKeyHas128BitsOfChanceAndNoTwoAreAlike() {
    Set<String> keys = new HashSet<>();
    for (int at = 0; at < 200; at++) {
      keys.add(link());
      door.invite();
    }
    assertThat(keys).hasSize(200).allMatch(link -> link.matches(".*#[A-Za-z0-9_-]{22}"));
  }

  @Test
  void wrongKeysAreSlowedEachLongerThanTheOneBefore() {
    assertThat(guess("a").status()).isEqualTo(403);
    assertThat(guess("b").status()).isEqualTo(429);
    wait(Duration.ofMillis(600));
    assertThat(guess("c").status()).isEqualTo(403);
    wait(Duration.ofMillis(600));
    assertThat(guess("d").status()).isEqualTo(429);
    wait(Duration.ofMillis(600));
    assertThat(guess("e").status()).isEqualTo(403);
  }

  private Said guess(String key) {
    return phone.join(door.address() + "/#" + key.repeat(22), "");
  }

  @Test
  void afterTenWrongKeysTheRightOneIsWorthNothingUntilAPersonAsksForAnother() {
    String right = link();
    for (int at = 0; at < 10; at++) {
      assertThat(guess("x").status()).isEqualTo(403);
      wait(Duration.ofMinutes(1).minusMillis(1));
    }
    assertThat(door.invitation()).isEmpty();
    assertThat(phone.join(right, "").status()).isEqualTo(403);
    wait(Duration.ofMinutes(1));
    door.invite();
    assertThat(phone.join(link(), "").status()).isEqualTo(200);
  }

  /** Neither with time nor when a phone goes: only a person asks for another. */
  @Test
  void afterTenWrongKeysNoOtherComesByItself() {
    joinFirst();
    for (int at = 0; at < 10; at++) {
      assertThat(guess("x").status()).isEqualTo(403);
      wait(Duration.ofMinutes(1).minusMillis(1));
    }
    wait(Duration.ofMinutes(11));
    ((Door) door).tick();
    assertThat(door.invitation()).as("with time").isEmpty();
    door.putOut(door.joined().get(0).number());
    assertThat(door.invitation()).as("when a phone goes").isEmpty();
    door.invite();
    assertThat(door.invitation()).as("when a person asks").isPresent();
  }

  /** Wrong keys count on when an old key is replaced. */
  @Test
  void tenWrongKeysInAllAreTooManyHoweverOldTheKeyIs() {
    for (int at = 0; at < 10; at++) {
      assertThat(guess("x").status()).isEqualTo(403);
      wait(Duration.ofMinutes(6));
      ((Door) door).tick();
    }
    assertThat(door.invitation()).isEmpty();
  }

  @Test
  void cookiesThatAreGuessedOpenNothing() {
    joinFirst();
    Caller thief = new Caller(door.address());
    String own = phone.cookie();
    for (String wrong :
        List.of(
            "wherefrom=",
            "wherefrom=1",
            own.substring(0, own.length() - 1),
            own + "A",
            own + "; " + own,
            own.replace("wherefrom", "other"))) {
      thief.takeCookie(wrong);
      assertThat(thief.get("/state").status()).as(wrong).isEqualTo(401);
      assertThat(thief.code(out()).status()).as(wrong).isEqualTo(401);
    }
  }

  // Replay.

  @Test
  void aKeyThatWasUsedLetsNobodyElseIn() {
    String link = link();
    joinFirst();
    Caller second = new Caller(door.address());
    assertThat(second.join(link, "Mallory").status()).isEqualTo(403);
    assertThat(second.cookie()).isEmpty();
    assertThat(door.joined()).hasSize(1);
  }

  @Test
  void anOldKeyLetsNobodyIn() {
    String link = link();
    wait(Duration.ofMinutes(10).plusSeconds(1));
    assertThat(phone.join(link, "").status()).isEqualTo(403);
  }

  @Test
  void anActThatIsSentAgainIsAnsweredAlikeAndDoneOnce() {
    joinFirst();
    String act = Caller.freshAct();
    phone.act("work", "put_together");
    Said first = phone.act(act, "code", sample.card("3EX"));
    long before = entries();
    Said again = phone.act(act, "code", out());
    assertThat(again.body()).isEqualTo(first.body());
    assertThat(entries()).isEqualTo(before);
  }

  @Test
  void thePhoneThatWasPutOutCanDoNothingMore() {
    joinFirst();
    door.putOut(door.joined().get(0).number());
    assertThat(phone.get("/state").status()).isEqualTo(401);
    assertThat(phone.code(out()).status()).isEqualTo(401);
  }

  @Test
  void aClosedDoorAnswersNobody() throws IOException {
    joinFirst();
    door.close();
    assertThat(door.isOpen()).isFalse();
    assertThat(door.invitation()).isEmpty();
    assertThat(connects()).isFalse();
  }

  private boolean connects() throws IOException {
    try (RawCaller raw = new RawCaller(door.address())) {
      return raw.send("GET / HTTP/1.1\r\nHost: " + address() + "\r\n\r\n").status() != 0;
    } catch (java.net.ConnectException refused) {
      return false;
    }
  }

  // Huge and slow bodies.

  @Test
  void aPictureOfMoreThan25MbIsRefusedByItsHeadAlone() throws IOException {
    joinFirst();
    try (RawCaller raw = new RawCaller(door.address())) {
      assertThat(raw.send(photoHead("Content-Length: 25000001\r\n")).status()).isEqualTo(413);
    }
  }

  private String photoHead(String length) {
    return "POST /photo HTTP/1.1\r\nHost: "
        + address()
        + "\r\nOrigin: "
        + door.address()
        + "\r\nCookie: "
        + phone.cookie()
        + "\r\nContent-Type: image/jpeg\r\nX-Act: "
        + Caller.freshAct()
        + "\r\n"
        + length
        + "\r\n";
  }

  /** Nothing is said of the length: it is counted as it comes. */
  @Test
  void aPictureThatGoesOnAndOnIsCutOff() throws IOException {
    reopen(smallPictures());
    joinFirst();
    String piece = "10000\r\n" + "\u00ff".repeat(0x10000) + "\r\n";
    try (RawCaller raw = new RawCaller(door.address())) {
      raw.send(photoHead("Transfer-Encoding: chunked\r\n"));
      for (int at = 0; at < 5; at++) {
        raw.send(piece);
      }
      assertThat(raw.status()).isIn(413, 0);
    }
    assertThat(leftBehind()).isZero();
  }

  private static Limits smallPictures() {
    Limits usual = Limits.USUAL;
    return new Limits(
        200_000,
        usual.words(),
        usual.body(),
        usual.key(),
        usual.wrongKeys(),
        usual.unused(),
        usual.phones(),
        usual.burst(),
        usual.perSecond());
  }

  private static long leftBehind() throws IOException {
    try (Stream<Path> files = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
      return files
          .filter(file -> file.getFileName().toString().endsWith(".picture"))
          .filter(DoorAttacksTest::isOurs)
          .count();
    }
  }

  /** Other tests may be at work beside this one: only what is large came from here. */
  private static boolean isOurs(Path file) {
    try {
      return Files.size(file) > 190_000 && Files.size(file) <= 280_000;
    } catch (IOException gone) {
      return false;
    }
  }

  @Test
  void wordsAreFew() {
    joinFirst();
    assertThat(phone.act("reason", "x".repeat(5_000)).status()).isEqualTo(413);
  }

  @Test
  void aBodyThatTricklesIsCutOff() throws IOException, InterruptedException {
    reopen(Limits.USUAL.withBody(Duration.ofMillis(300)));
    joinFirst();
    try (RawCaller raw = new RawCaller(door.address())) {
      raw.send(photoHead("Content-Length: 1000\r\n"));
      assertThat(raw.trickle("\u00ff", 999)).isIn(408, 0);
    }
  }

  @Test
  void aBodyThatNeverComesIsCutOff() throws IOException {
    reopen(Limits.USUAL.withBody(Duration.ofMillis(200)));
    joinFirst();
    try (RawCaller raw = new RawCaller(door.address())) {
      assertThat(raw.send(photoHead("Content-Length: 1000\r\n")).status()).isIn(408, 0);
    }
  }

  @Test
  void manyWhoSayHalfAHeadDoNotKeepAPhoneWaiting() throws IOException {
    joinFirst();
    List<RawCaller> slow = new ArrayList<>();
    try {
      for (int at = 0; at < 40; at++) {
        slow.add(new RawCaller(door.address()).send("GET / HTTP/1.1\r\nHost: "));
      }
      assertThat(phone.get("/state").status()).isEqualTo(200);
    } finally {
      for (RawCaller one : slow) {
        one.close();
      }
    }
  }

  @Test
  void aLengthThatIsNoneIsRefused() throws IOException {
    joinFirst();
    for (String length : List.of("-1", "0x10", "99999999999999999999")) {
      try (RawCaller raw = new RawCaller(door.address())) {
        raw.send(photoHead("Content-Length: " + length + "\r\n"));
        assertThat(raw.status()).as(length).isIn(400, 413, 0);
      }
    }
  }

  // Pictures that are none.

  @Test
  void brokenPicturesGetASentenceAndNoPathOfTheDisk() {
    joinFirst();
    byte[] whole = PhotographFiles.jpeg(400, Optional.empty(), 1);
    byte[] cut = Arrays.copyOf(whole, 60);
    byte[] spoilt = whole.clone();
    Arrays.fill(spoilt, 20, 400, (byte) 0xFF);
    for (byte[] broken : List.of(cut, spoilt, Arrays.copyOf(whole, 3))) {
      Said said = phone.photo(broken);
      assertThat(said.status()).isEqualTo(422);
      assertThat(said.body()).startsWith("{\"said\":\"The picture ").doesNotContain("/", "\\\\");
    }
  }

  @Test
  void whatIsNoJpegIsNotDecoded() {
    joinFirst();
    for (String start : List.of("GIF89a", "BM", "II*\0", "<svg>", "%PDF-1.4", "")) {
      assertThat(phone.photo(start.getBytes()).status()).as(start).isEqualTo(415);
    }
    Map<String, String> tiff = Map.of("Content-Type", "image/tiff", "X-Act", Caller.freshAct());
    assertThat(phone.photo(new byte[10], tiff).status()).isEqualTo(415);
    Map<String, String> zipped =
        Map.of(
            "Content-Type", "image/jpeg", "Content-Encoding", "gzip", "X-Act", Caller.freshAct());
    assertThat(phone.photo(new byte[10], zipped).status()).isEqualTo(415);
  }

  /** The head of a JPEG file of 65,000 by 65,000 pixels, and nothing behind it. */
  @Test
  void aPictureThatWouldFillTheMemoryIsRefusedByItsHead() {
    joinFirst();
    byte[] huge = PhotographFiles.jpeg(400, Optional.empty(), 1);
    int frame = indexOf(huge, (byte) 0xC0);
    for (int at = frame + 4; at < frame + 8; at += 2) {
      huge[at] = (byte) 0xFD;
      huge[at + 1] = (byte) 0xE8;
    }
    Said said = phone.photo(huge);
    assertThat(said.status()).isEqualTo(422);
    assertThat(said.body()).contains("too large");
  }

  private static int indexOf(byte[] jpeg, byte marker) {
    for (int at = 0; at < jpeg.length - 1; at++) {
      if (jpeg[at] == (byte) 0xFF && jpeg[at + 1] == marker) {
        return at + 1;
      }
    }
    throw new IllegalArgumentException("no such marker");
  }

  @Test
  void aPictureIsKeptWithPartsOfTheJobAlone() throws IOException {
    joinFirst();
    byte[] whole = PhotographFiles.jpeg(400, Optional.empty(), 1);
    for (String key : List.of("#9999", "../../etc", "#", "lobe@99EX", "\u00e4")) {
      Map<String, String> head =
          Map.of("Content-Type", "image/jpeg", "X-Act", Caller.freshAct(), "X-Keep", key);
      assertThat(phone.photo(whole, head).status()).as(key).isEqualTo(400);
    }
    try (Stream<Path> files = Files.walk(folder)) {
      assertThat(files.filter(Files::isRegularFile)).isEmpty();
    }
  }

  // Paths.

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/..",
        "/../phone.js",
        "/%2e%2e/%2e%2e/etc/passwd",
        "/..%2f..%2fetc%2fpasswd",
        "//etc/passwd",
        "/phone.js/",
        "/phone.js%00",
        "/phone.html",
        "/wherefrom/phone/phone.html",
        "/regular.ttf/../bold.ttf",
        "/.",
        "/state/",
        "/STATE",
        "/?x",
        "/phone.css?x",
        "/logbook.jsonl",
        "/photos/"
      })
  void noOtherPathLeadsAnywhere(String path) throws IOException {
    joinFirst();
    try (RawCaller raw = new RawCaller(door.address())) {
      raw.send("GET " + path + " HTTP/1.1\r\nHost: " + address() + "\r\nCookie: ");
      raw.send(phone.cookie() + "\r\n\r\n");
      assertThat(raw.status()).isIn(400, 404);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"http://elsewhere.example/", "elsewhere.example:80", "*", "http://[::1", "\u00ff"})
  void noOtherTargetLeadsAnywhere(String target) throws IOException {
    try (RawCaller raw = new RawCaller(door.address())) {
      raw.send("GET " + target + " HTTP/1.1\r\nHost: " + address() + "\r\n\r\n");
      assertThat(raw.status()).isIn(400, 404, 0);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"PUT", "DELETE", "OPTIONS", "HEAD", "TRACE", "CONNECT", "PATCH", "get"})
  void noOtherMethodDoesAnything(String method) throws IOException {
    try (RawCaller raw = new RawCaller(door.address())) {
      raw.send(method + " / HTTP/1.1\r\nHost: " + address() + "\r\n\r\n");
      assertThat(raw.status()).isIn(405, 404, 400, 0);
    }
  }

  // Other pages, and other names for this address.

  @Test
  void anotherPageCanDoNothingWithThePhonesCookie() throws IOException {
    joinFirst();
    long before = entries();
    for (String origin :
        List.of(
            "http://elsewhere.example",
            "null",
            "https://" + address(),
            door.address() + ".elsewhere.example",
            "http://127.0.0.1")) {
      assertThat(from(origin, "same-origin")).as(origin).isEqualTo(403);
    }
    assertThat(from(door.address(), "cross-site")).isEqualTo(403);
    assertThat(from("", "same-origin")).isEqualTo(403);
    assertThat(entries()).isEqualTo(before);
  }

  /** The status of an act in the name of the phone that a page of this origin sends. */
  private int from(String origin, String site) throws IOException {
    String body = PhoneJson.object(Map.of("id", Caller.freshAct(), "deed", "code", "with", out()));
    String head =
        "POST /act HTTP/1.1\r\nHost: "
            + address()
            + (origin.isEmpty() ? "" : "\r\nOrigin: " + origin)
            + "\r\nSec-Fetch-Site: "
            + site
            + "\r\nCookie: "
            + phone.cookie()
            + "\r\nContent-Type: application/json\r\nContent-Length: "
            + body.length()
            + "\r\n\r\n";
    try (RawCaller raw = new RawCaller(door.address())) {
      return raw.send(head + body).status();
    }
  }

  /** A name elsewhere that is made to lead to this address gives its pages no way in. */
  @ParameterizedTest
  @ValueSource(strings = {"elsewhere.example", "localhost", "127.0.0.1", "127.0.0.1:1", ""})
  void anotherHostIsRefused(String host) throws IOException {
    joinFirst();
    String cookie = "\r\nCookie: " + phone.cookie() + "\r\n\r\n";
    try (RawCaller raw = new RawCaller(door.address())) {
      raw.send("GET /state HTTP/1.1\r\nHost: " + host + cookie);
      assertThat(raw.status()).isIn(400, 403);
    }
  }

  @Test
  void aFormOfAnotherPageIsNotTaken() {
    joinFirst();
    String body = PhoneJson.object(Map.of("id", Caller.freshAct(), "deed", "code", "with", out()));
    Said said =
        Caller.send(
            HttpRequest.newBuilder(URI.create(door.address() + "/act"))
                .header("Origin", door.address())
                .header("Cookie", phone.cookie())
                .header("Content-Type", "text/plain")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    assertThat(said.status()).isEqualTo(415);
  }

  @Test
  void everyAnswerForbidsWhatThePageDoesNotNeed() {
    joinFirst();
    for (String path : List.of("/", "/phone.js", "/phone.css", "/state", "/nothing")) {
      Said said = phone.get(path);
      assertThat(said.header("Content-Security-Policy"))
          .as(path)
          .startsWith("default-src 'none'; script-src 'self'; style-src 'self'")
          .contains("frame-ancestors 'none'", "form-action 'none'", "base-uri 'none'")
          .doesNotContain("unsafe", "*", "data:", "http:");
      assertThat(said.header("X-Content-Type-Options")).isEqualTo("nosniff");
      assertThat(said.header("Referrer-Policy")).isEqualTo("no-referrer");
      assertThat(said.header("Cache-Control")).isEqualTo("no-store");
      assertThat(said.whole().headers().map().keySet())
          .noneMatch(name -> name.toLowerCase().startsWith("access-control"));
    }
  }

  @Test
  void thePageHasNothingInlineAndNothingFromElsewhere() {
    String page = phone.get("/").body();
    assertThat(page).doesNotContain("style=", "onclick", "http:", "https:", "javascript:");
    assertThat(page.replace("<script src=\"phone.js\" defer></script>", ""))
        .doesNotContain("<script", "<style");
    assertThat(phone.get("/phone.js").body())
        .doesNotContain("innerHTML", "eval(", "document.write", "insertAdjacent", "http:");
  }

  @Test
  void theCookieIsForThisAddressAlone() {
    Said joined = phone.join(link(), "Anna");
    assertThat(joined.header("Set-Cookie"))
        .matches("wherefrom=[A-Za-z0-9_-]{43}; Path=/; HttpOnly; SameSite=Strict");
  }

  // No listing.

  @Test
  void whoHasNotJoinedSeesNothingOfTheJob() {
    assertThat(phone.get("/").body()).doesNotContain("Launch V8");
    for (String path : List.of("/act", "/photo", "/leave")) {
      Said said = phone.post(path, "{}");
      assertThat(said.status()).as(path).isEqualTo(401);
      assertThat(said.body()).doesNotContain("Launch V8");
    }
    assertThat(phone.get("/state").status()).isEqualTo(401);
    assertThat(phone.post("/hello", "{\"key\":\"\"}").body()).doesNotContain("Launch V8");
  }

  // Too much.

  @Test
  void aPhoneThatAsksTooMuchHasToWait() throws IOException {
    reopen(Limits.USUAL.withBurst(5, 1));
    joinFirst();
    int refused = 0;
    for (int at = 0; at < 12; at++) {
      refused += phone.get("/state").status() == 429 ? 1 : 0;
    }
    assertThat(refused).isBetween(5, 7);
    wait(Duration.ofSeconds(5));
    assertThat(phone.get("/state").status()).isEqualTo(200);
  }

  @Test
  void strangersWhoAskTooMuchDoNotKeepAPhoneWaiting() throws IOException {
    reopen(Limits.USUAL.withBurst(5, 1));
    joinFirst();
    Caller stranger = new Caller(door.address());
    Set<Integer> answers = new HashSet<>();
    for (int at = 0; at < 12; at++) {
      answers.add(stranger.get("/").status());
    }
    assertThat(answers).contains(429);
    assertThat(phone.get("/state").status()).isEqualTo(200);
  }

  @Test
  void noMorePhonesJoinThanMay() {
    for (int at = 0; at < Limits.USUAL.phones(); at++) {
      assertThat(new Caller(door.address()).join(link(), "").status()).isEqualTo(200);
    }
    assertThat(door.invitation()).isEmpty();
    door.invite();
    assertThat(door.invitation()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "[]",
        "null",
        "{",
        "{\"id\":1}",
        "{\"id\":{}}",
        "{\"id\":\"x\"} {}",
        "{\"a\":\"\",\"b\":\"\",\"c\":\"\",\"d\":\"\",\"e\":\"\",\"f\":\"\",\"g\":\"\",\"h\":\"\",\"i\":\"\"}",
        "{\"id\":\"0123456789abcdef\",\"deed\":\"no_such\"}",
        "{\"id\":\"0123456789abcdef\",\"deed\":\"photograph\"}",
        "{\"id\":\"0123456789abcdef\",\"deed\":\"out\",\"with\":\"99999\"}",
        "{\"id\":\"short\",\"deed\":\"due\"}",
        "{\"id\":\"0123456789abcdef\",\"deed\":\"work\",\"with\":\"../x\"}"
      })
  void whatIsNotUnderstoodDoesNothing(String json) {
    joinFirst();
    long before = entries();
    assertThat(phone.post("/act", json).status()).isEqualTo(400);
    assertThat(entries()).isEqualTo(before);
  }

  @Test
  void aNameIsLettersAlone() {
    phone.join(link(), "<b>Anna</b>\u202e\n'; DROP " + "x".repeat(100));
    assertThat(door.joined().get(0).name()).isEqualTo("bAnnab' DROP xxxxxxxxxxx");
  }

  @Test
  void anUnusedDoorCloses() {
    wait(Duration.ofHours(LONG_AGO_HOURS));
    ((Door) door).tick();
    assertThat(door.isOpen()).isFalse();
  }
}
