package wherefrom.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.Benches;
import wherefrom.job.By;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.PhotoAdded;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.entry.TakenBack;
import wherefrom.job.phone.PhoneBench;
import wherefrom.job.phone.PhoneDoor;
import wherefrom.job.phone.PhoneHost;
import wherefrom.job.phone.PhonePictures;
import wherefrom.job.phone.Phones.Medium;
import wherefrom.job.phone.Phones.Nearby;
import wherefrom.job.settings.ServerAddress;
import wherefrom.job.tags.TagBook;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.logbook.LogLines;
import wherefrom.parts.Place;
import wherefrom.phone.Caller;
import wherefrom.phone.Caller.Said;
import wherefrom.phone.HttpPhones;
import wherefrom.scan.PipelineReader;
import wherefrom.scan.grease.PhotographFiles;
import wherefrom.scan.picture.PictureFiles;

/**
 * A phone at a job on a shared server, and the way to the database is lost while it scans: what it
 * is told as done is committed, and what it sends again is written once.
 */
class SharedPhoneTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int AWAY = 503;
  private static final int TIMES = 10;
  private static final String ANOTHER = "another-act-of-a-test";

  @TempDir Path cache;

  private final ServerAddress address = TestServer.empty();
  private final Crossing crossing = new Crossing(address.port());
  private final Database database =
      new Database(
          new ServerAddress("localhost", crossing.port(), address.database(), address.user()),
          Map.of());

  /** The database itself, whatever becomes of the way that the phone's program has to it. */
  private final Database beyond = new Database(address, Map.of());

  private int id;
  private OpenJob window;
  private PhoneDoor door;
  private Caller phone;

  @BeforeEach
  void open() throws IOException {
    id = ServerTroubleTest.begun(beyond);
    try (OpenJob first = job(beyond)) {
      first.inOne(
          () ->
              List.copyOf(first.state().parts())
                  .forEach(part -> first.record(new PartOut(part.part().item()))));
    }
    window = job(database);
    window.watch(() -> {});
    door =
        new HttpPhones(System::nanoTime, new SecureRandom()::nextBytes)
            .open(new Nearby("127.0.0.1", Medium.UNKNOWN, "this computer"), new Host());
    phone = new Caller(door.address());
  }

  private OpenJob job(Database on) {
    return OpenJob.in(
        cache.resolve("launch"), ServerLogbook.open(on, id), Clock.systemUTC(), By.FIRST);
  }

  @AfterEach
  void close() {
    crossing.close(false);
    door.close();
    window.close();
    database.close();
    beyond.close();
    crossing.close();
  }

  /** The window's job, as it lets phones in. */
  private final class Host implements PhoneHost {
    private final ServerPhotos photos = new ServerPhotos(database, new Mirror(database, cache));

    @Override
    public String name() {
      return "Launch V8";
    }

    @Override
    public Path folder() {
      return window.folder();
    }

    @Override
    public PhoneBench bench(String who) {
      return new PhoneBench(
          window.beside(new By(2, who)), Benches.NO_NAMES, () -> OutOrder.CYLINDER);
    }

    @Override
    public PhonePictures pictures() {
      return new PhonePictures(new PipelineReader(), new PictureFiles()::load, photos);
    }

    @Override
    public void changed() {}
  }

  private void join() {
    assertThat(phone.join(door.invitation().orElseThrow().link(), "Anna").status()).isEqualTo(200);
  }

  private static JsonNode done(Said said) throws IOException {
    assertThat(said.status()).as(said.body()).isEqualTo(200);
    return JSON.readTree(said.body());
  }

  private static String cue(Said said) throws IOException {
    return done(said).get("cue").asText();
  }

  private static void notYet(Said said) {
    assertThat(said.status()).as(said.body()).isEqualTo(AWAY);
    assertThat(said.body()).contains("No connection to the shared server");
  }

  /** What the server is told next to write is written, and its answer goes nowhere. */
  private void loseTheAnswer() {
    crossing.deafenAt("insert into entry");
  }

  private void hearAgain() {
    crossing.deafen(false);
    crossing.cut();
  }

  /** Sent again until it goes through, as the page does; connections take their time to be made. */
  private static JsonNode again(Supplier<Said> act) throws IOException {
    Said said = act.get();
    for (int time = 1; said.status() == AWAY && time < TIMES; time++) {
      said = act.get();
    }
    return done(said);
  }

  private static String cueAgain(Supplier<Said> act) throws IOException {
    return again(act).get("cue").asText();
  }

  private String tag(String place) {
    return new TagBook(window.state(), Benches.NO_NAMES)
        .of(window.state().findOwner(Place.find(place).orElseThrow()).orElseThrow())
        .digits();
  }

  private String card(String spot) {
    return new TagBook(window.state(), Benches.NO_NAMES).of(Benches.spot(spot)).digits();
  }

  /** How often this was committed, as the database itself has it. */
  private long committed(Class<? extends JobEntry> kind) {
    List<LogLines.Line> lines =
        beyond.ask(connection -> LineRows.newer(connection, id, 0)).stream()
            .map(LineRows.Row::line)
            .toList();
    return LogLines.read(lines).entries().stream()
        .flatMap(LoggedEntry::each)
        .filter(logged -> kind.isInstance(logged.entry()))
        .count();
  }

  @Test
  void whatIsWrittenUnheardIsNotToldUntilItIsKnownAndIsWrittenOnce() throws IOException {
    join();
    done(phone.code(tag("pushrod@3EX")));
    String right = Caller.freshAct();
    loseTheAnswer();
    notYet(phone.act(right, "code", card("3EX")));
    assertThat(committed(PartFitted.class)).as("nobody heard of it").isEqualTo(1);
    assertThat(cue(phone.get("/state"))).as("nothing is told as done").isEmpty();
    hearAgain();
    assertThat(cueAgain(() -> phone.act(right, "code", card("3EX")))).isEqualTo("RIGHT");
    assertThat(committed(PartFitted.class)).isEqualTo(1);

    done(phone.code(tag("pushrod@5EX")));
    String wrong = Caller.freshAct();
    loseTheAnswer();
    notYet(phone.act(wrong, "code", card("7EX")));
    assertThat(committed(StopGiven.class)).isEqualTo(1);
    hearAgain();
    assertThat(cueAgain(() -> phone.act(wrong, "code", card("7EX")))).isEqualTo("STOP");
    assertThat(cue(phone.act(wrong, "code", card("7EX")))).as("sent once more").isEqualTo("STOP");
    assertThat(committed(StopGiven.class)).isEqualTo(1);

    String undo = Caller.freshAct();
    loseTheAnswer();
    notYet(phone.act(undo, "undo", ""));
    hearAgain();
    assertThat(cueAgain(() -> phone.act(undo, "undo", ""))).isEmpty();
    assertThat(committed(TakenBack.class)).as("the stop alone is taken back").isEqualTo(1);
    assertThat(committed(PartFitted.class)).isEqualTo(1);
  }

  @Test
  void whatDoesNotArriveIsNotToldAndIsDoneWhenTheWayIsBack() throws IOException {
    join();
    done(phone.code(tag("pushrod@3EX")));
    String right = Caller.freshAct();
    crossing.close(true);
    notYet(phone.act(right, "code", card("3EX")));
    notYet(phone.act(right, "code", card("3EX")));
    assertThat(done(phone.get("/state")).get("headline").asText()).isEqualTo("Part in hand");
    assertThat(committed(PartFitted.class)).isZero();
    crossing.close(false);
    assertThat(cueAgain(() -> phone.act(right, "code", card("3EX")))).isEqualTo("RIGHT");
    assertThat(committed(PartFitted.class)).as("told, so committed").isEqualTo(1);

    done(phone.code(tag("pushrod@5EX")));
    String wrong = Caller.freshAct();
    crossing.close(true);
    notYet(phone.act(wrong, "code", card("7EX")));
    assertThat(committed(StopGiven.class)).isZero();
    crossing.close(false);
    assertThat(cueAgain(() -> phone.act(wrong, "code", card("7EX")))).isEqualTo("STOP");
    assertThat(committed(StopGiven.class)).as("told, so committed").isEqualTo(1);
    assertThat(committed(PartFitted.class)).isEqualTo(1);
  }

  /** The person drops what did not go through, and scans something else. */
  @Test
  void anotherScanIsNotAnsweredForTheOneThatWasLost() throws IOException {
    join();
    done(phone.code(tag("pushrod@3EX")));
    loseTheAnswer();
    notYet(phone.code(card("3EX")));
    hearAgain();
    JsonNode wrong = again(() -> phone.act(ANOTHER, "code", card("5EX")));
    assertThat(wrong.get("cue").asText()).isEqualTo("STOP");
    assertThat(wrong.get("next").asText()).startsWith("Kept after all: ");
    assertThat(committed(PartFitted.class)).isEqualTo(1);
    assertThat(committed(StopGiven.class)).isEqualTo(1);
  }

  @Test
  void whileThereIsNoWayNobodyJoinsAndTheKeyIsGoodAfterwards() throws IOException {
    String link = door.invitation().orElseThrow().link();
    crossing.close(true);
    notYet(phone.join(link, "Anna"));
    assertThat(door.joined()).isEmpty();
    crossing.close(false);
    again(() -> phone.join(link, "Anna"));
  }

  @Test
  void aPhotographIsKeptOnceTheServerHasItAndNotBefore() throws IOException {
    join();
    String subject = done(phone.code(tag("pushrod@3EX"))).get("subject").asText();
    byte[] picture = PhotographFiles.jpeg(400, Optional.empty(), 1);
    Map<String, String> head =
        Map.of("Content-Type", "image/jpeg", "X-Act", Caller.freshAct(), "X-Keep", subject);
    crossing.close(true);
    notYet(phone.photo(picture, head));
    assertThat(committed(PhotoAdded.class)).isZero();
    crossing.close(false);
    JsonNode kept = again(() -> phone.photo(picture, head));
    assertThat(kept.get("small").asText()).startsWith("Kept with");
    done(phone.photo(picture, head));
    assertThat(committed(PhotoAdded.class)).isEqualTo(1);
  }
}
