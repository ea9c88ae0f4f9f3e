package wherefrom.phone;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wherefrom.job.phone.PhoneDoor;
import wherefrom.job.photos.Photos;
import wherefrom.logbook.PhotoFiles;
import wherefrom.parts.TagCode;
import wherefrom.phone.Caller.Said;
import wherefrom.scan.grease.PhotographFiles;

/** Phones at the door, over a socket of this machine. */
class DoorTest extends DoorBench {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final List<String> PLACES =
      List.of("1IN", "1EX", "2IN", "2EX", "3IN", "3EX", "4IN", "4EX");

  private static JsonNode view(Said said) throws IOException {
    assertThat(said.status()).as(said.body()).isEqualTo(200);
    return JSON.readTree(said.body());
  }

  private static String headline(Said said) throws IOException {
    return view(said).get("headline").asText();
  }

  @Test
  void theNumberIsTheOneInTheWindowAndSayingHelloUsesNothingUp() throws IOException {
    String link = link();
    String key = link.substring(link.indexOf('#') + 1);
    Caller phone = new Caller(door.address());
    JsonNode hello = view(phone.post("/hello", PhoneJson.object(Map.of("key", key))));
    assertThat(hello.get("number").asText()).isEqualTo(door.invitation().orElseThrow().number());
    assertThat(hello.get("job").asText()).isEqualTo("Launch V8");
    assertThat(phone.join(link, "Anna").status()).isEqualTo(200);
  }

  @Test
  void whoHasJoinedIsListedAndTheNextPhoneHasAnotherKey() {
    String first = link();
    Caller anna = joined("Anna");
    joined("");
    assertThat(door.joined()).extracting(PhoneDoor.Joined::name).containsExactly("Anna", "");
    assertThat(door.joined()).allMatch(PhoneDoor.Joined::near);
    assertThat(link()).isNotEqualTo(first);
    assertThat(anna.post("/leave", "{}").status()).isEqualTo(200);
    assertThat(door.joined()).hasSize(1);
  }

  @Test
  void thePageAndItsFilesAreServed() {
    Caller phone = new Caller(door.address());
    assertThat(phone.get("/").header("Content-Type")).startsWith("text/html");
    assertThat(phone.get("/phone.js").header("Content-Type")).startsWith("text/javascript");
    assertThat(phone.get("/phone.css").header("Content-Type")).startsWith("text/css");
    assertThat(phone.get("/bold.ttf").header("Content-Type")).isEqualTo("font/ttf");
  }

  @Test
  void aPhotographIsReadAndTheCardMakesItARightPlace() throws IOException {
    Caller phone = joined("");
    assertThat(headline(phone.photo(photograph("pushrod@3EX")))).isEqualTo("Part in hand");
    JsonNode right = view(phone.code(sample.card("3EX")));
    assertThat(right.get("cue").asText()).isEqualTo("RIGHT");
    assertThat(headline(phone.get("/state"))).isEqualTo("right place");
    assertThat(leftBehind()).isZero();
  }

  /** No picture stays in the system's folder for what is brief. */
  private static long leftBehind() throws IOException {
    try (Stream<Path> files = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
      return files
          .filter(file -> file.getFileName().toString().matches("wherefrom-.*\\.picture"))
          .filter(file -> isOld(file))
          .count();
    }
  }

  /** What is younger may be another test's that runs beside this one. */
  private static boolean isOld(Path file) {
    return file.toFile().lastModified()
        < ProcessHandle.current().info().startInstant().orElseThrow().toEpochMilli();
  }

  @Test
  void aPhotographIsKeptWithThePart() throws IOException {
    Caller phone = joined("");
    JsonNode hand = view(phone.code(sample.tag("pushrod@3EX")));
    Map<String, String> head =
        Map.of(
            "Content-Type",
            "image/jpeg",
            "X-Act",
            Caller.freshAct(),
            "X-Keep",
            hand.get("subject").asText());
    byte[] picture = photograph("pushrod@3EX");
    assertThat(view(phone.photo(picture, head)).get("small").asText()).startsWith("Kept with");
    assertThat(view(phone.photo(picture, head)).get("small").asText()).startsWith("Kept with");
    try (Stream<Path> files = Files.walk(folder)) {
      assertThat(files.filter(Files::isRegularFile)).hasSize(1);
    }
  }

  private Map<String, String> keeping(String subject) {
    return Map.of("Content-Type", "image/jpeg", "X-Act", Caller.freshAct(), "X-Keep", subject);
  }

  /** The picture is good: to take it again would not help. */
  @Test
  void whatCannotBeKeptIsNotCalledABadPicture() throws IOException {
    Caller phone = joined("");
    String subject = view(phone.code(sample.tag("pushrod@3EX"))).get("subject").asText();
    long before = entries();
    String full = "The photograph could not be kept: the disk is full; make room on it.";
    host.photos = new FullDisk(full);
    Said said = phone.photo(photograph("pushrod@3EX"), keeping(subject));
    assertThat(said.status()).isEqualTo(507);
    assertThat(said.body()).contains(full);
    host.photos = new FullDisk("The photograph could not be kept: " + folder + ": no.");
    said = phone.photo(photograph("pushrod@3EX"), keeping(subject));
    assertThat(said.status()).isEqualTo(507);
    assertThat(said.body()).contains("could not be kept.").doesNotContain(folder.toString());
    assertThat(entries()).isEqualTo(before);
  }

  /** Photographs that can be read and not be put down. */
  private static final class FullDisk implements Photos {
    private final Photos real = new PhotoFiles();
    private final String sentence;

    FullDisk(String sentence) {
      this.sentence = sentence;
    }

    @Override
    public String add(Path jobFolder, Path picture, Set<String> named) throws IOException {
      throw new IOException(sentence);
    }

    @Override
    public Set<String> names(Path picture) throws IOException {
      return real.names(picture);
    }

    @Override
    public boolean isThere(Path jobFolder, String name) throws IOException {
      return real.isThere(jobFolder, name);
    }

    @Override
    public Path locate(Path jobFolder, String name) {
      return real.locate(jobFolder, name);
    }
  }

  /** Half a picture can be read as one, and must not be kept as one. */
  @Test
  void halfAPictureThatCameIsNoPicture() throws IOException {
    Caller phone = joined("");
    String subject = view(phone.code(sample.tag("pushrod@3EX"))).get("subject").asText();
    long before = entries();
    byte[] picture = photograph("pushrod@3EX");
    String act = Caller.freshAct();
    String head = head(phone, act, picture.length).strip() + "\r\nX-Keep: " + subject + "\r\n\r\n";
    try (RawCaller raw = new RawCaller(door.address())) {
      raw.send(head).send(Arrays.copyOf(picture, picture.length / 2)).endOfWords();
      assertThat(raw.status()).isZero();
    }
    assertThat(entries()).isEqualTo(before);
    try (Stream<Path> files = Files.walk(folder)) {
      assertThat(files.filter(Files::isRegularFile)).isEmpty();
    }
  }

  /** The phone goes before the answer comes; then it asks again, as the page does. */
  @Test
  void anActWhoseAnswerWasLostIsNotDoneTwice() throws Exception {
    Caller phone = joined("");
    long before = entries();
    CountDownLatch came = new CountDownLatch(1);
    CountDownLatch gone = new CountDownLatch(1);
    host.before =
        () -> {
          came.countDown();
          await(gone);
        };
    String act = Caller.freshAct();
    byte[] picture = photograph("pushrod@3EX");
    phone.act("work", "put_together");
    phone.code(sample.card("3EX"));
    try (RawCaller raw = new RawCaller(door.address())) {
      raw.send(head(phone, act, picture.length)).send(picture);
      came.await();
    }
    gone.countDown();
    Map<String, String> again = Map.of("Content-Type", "image/jpeg", "X-Act", act);
    assertThat(view(phone.photo(picture, again)).get("cue").asText()).isEqualTo("RIGHT");
    assertThat(entries()).isEqualTo(before + 1);
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private String head(Caller phone, String act, int length) {
    return "POST /photo HTTP/1.1\r\nHost: "
        + door.address().substring("http://".length())
        + "\r\nOrigin: "
        + door.address()
        + "\r\nCookie: "
        + phone.cookie()
        + "\r\nContent-Type: image/jpeg\r\nX-Act: "
        + act
        + "\r\nContent-Length: "
        + length
        + "\r\n\r\n";
  }

  @Test
  void whatCannotBeWrittenIsSaidAndDoneWhenItIsSentAgain() throws IOException {
    Caller phone = joined("");
    phone.code(sample.tag("pushrod@3EX"));
    String act = Caller.freshAct();
    sample.logbook.fail("The disk is full.");
    Said refused = phone.act(act, "code", sample.card("3EX"));
    assertThat(refused.status()).isEqualTo(409);
    assertThat(refused.body()).contains("The disk is full.");
    sample.logbook.fail("");
    assertThat(view(phone.act(act, "code", sample.card("3EX"))).get("cue").asText())
        .isEqualTo("RIGHT");
  }

  /** Each has its own part in the hand, whatever the others do meanwhile. */
  @Test
  void eightPhonesAtOnceEachFitTheirOwnPart() throws Exception {
    List<Caller> phones = new ArrayList<>();
    PLACES.forEach(place -> phones.add(joined(place)));
    long before = entries();
    ExecutorService hands = Executors.newFixedThreadPool(PLACES.size());
    try {
      List<Future<String>> places = new ArrayList<>();
      for (int at = 0; at < PLACES.size(); at++) {
        Caller phone = phones.get(at);
        String place = PLACES.get(at);
        places.add(hands.submit(() -> fit(phone, place)));
      }
      for (int at = 0; at < PLACES.size(); at++) {
        assertThat(places.get(at).get().replace(" ", "")).isEqualTo(PLACES.get(at));
      }
    } finally {
      hands.shutdownNow();
    }
    assertThat(entries()).isEqualTo(before + PLACES.size());
    assertThat(sample.job.state().fitted()).hasSize(PLACES.size());
  }

  private String fit(Caller phone, String place) throws IOException {
    assertThat(headline(phone.photo(photograph("pushrod@" + place)))).isEqualTo("Part in hand");
    JsonNode right = view(phone.code(sample.card(place)));
    assertThat(right.get("cue").asText()).isEqualTo("RIGHT");
    return right.get("place").asText();
  }

  /** What another phone did stays, and its stop is its own. */
  @Test
  void eachPhoneUndoesItsOwnLastStepAndHasItsOwnStop() throws IOException {
    Caller anna = joined("Anna");
    Caller bo = joined("Bo");
    fit(anna, "3EX");
    fit(bo, "5EX");
    anna.code(sample.tag("pushrod@1EX"));
    assertThat(view(anna.code(sample.card("7EX"))).get("cue").asText()).isEqualTo("STOP");
    assertThat(view(bo.get("/state")).get("cue").asText()).isEqualTo("RIGHT");
    assertThat(headline(bo.code(sample.tag("pushrod@2EX")))).isEqualTo("Part in hand");
    assertThat(view(bo.act("undo", "")).get("cue").asText()).isEmpty();
    assertThat(view(bo.act("undo", "")).get("small").asText()).contains("cylinder 5, exhaust");
    assertThat(view(anna.act("undo", "")).get("cue").asText()).isEmpty();
    assertThat(view(anna.act("undo", "")).get("small").asText())
        .as("the part that was stopped was still in the hand")
        .isEqualTo("Taken back: the half that waited is dropped.");
    assertThat(view(anna.act("undo", "")).get("small").asText()).contains("cylinder 3, exhaust");
    assertThat(view(anna.act("undo", "")).get("small").asText())
        .isEqualTo("There is nothing left to undo.");
    sample.job.catchUp();
    assertThat(sample.job.state().fitted()).isEmpty();
    assertThat(sample.job.stops().findWaiting()).isEmpty();
  }

  @Test
  void whoJoinsAtABenchUndoesNothingOfWhoeverWasThereBefore() throws IOException {
    Caller anna = joined("Anna");
    fit(anna, "3EX");
    anna.post("/leave", "{}");
    Caller bo = joined("Bo");
    assertThat(view(bo.act("undo", "")).get("small").asText())
        .isEqualTo("This phone has nothing left to undo.");
  }

  @Test
  void anOldDoorsPortIsTakenAndAnotherIsFound() throws IOException {
    try (PhoneDoor second = phones().open(HERE, host)) {
      assertThat(second.address()).isNotEqualTo(door.address());
      assertThat(new Caller(second.address()).get("/").status()).isEqualTo(200);
    }
  }

  /** The least of three, as other work on this machine only adds to it. */
  @Test
  void aPictureOfTwelveMegapixelsIsAnsweredWithinTwoAndAHalfSeconds() {
    Caller phone = joined("");
    for (Optional<TagCode> tag :
        List.of(TagCode.find(sample.tag("pushrod@3EX")), Optional.<TagCode>empty())) {
      byte[] picture = PhotographFiles.jpeg(4000, tag, 3);
      long least = Long.MAX_VALUE;
      for (int time = 0; time < 3; time++) {
        long from = System.nanoTime();
        assertThat(phone.photo(picture).status()).isEqualTo(200);
        least = Math.min(least, System.nanoTime() - from);
      }
      assertThat(least / 1e9).as("seconds").isLessThan(2.5);
    }
  }
}
