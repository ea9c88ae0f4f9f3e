package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.Spot;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.quantity.UnitSystem;

/** What an item and a card stand for is written in the job, whatever order the program goes by. */
class NumberingTest {
  private static final int ENGINE = 3681950;
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-01T10:00:00Z"), ZoneOffset.UTC);
  private static final Path LISTS = Path.of("src", "test", "resources", "numbering");

  @TempDir Path folder;

  static List<Layout> layouts() {
    return ReadyLayouts.all();
  }

  private OpenJob job(JobEntry opened) {
    Path job = folder.resolve("job-" + System.nanoTime());
    try (LogbookFile logbook = LogbookFile.create(job)) {
      Written.append(logbook, CLOCK.instant(), opened);
    }
    return new OpenJob(LogbookFile.read(job), CLOCK);
  }

  private static JobOpened opened(Layout layout) {
    return JobOpened.of("engine", ENGINE, layout, PartKind.all(), UnitSystem.INCH);
  }

  /** As the first version wrote it: without the two lists. */
  private static JobEntry old(JobOpened opened) throws IOException {
    JsonNode body = EntryCodec.body(opened);
    ((ObjectNode) body).remove(List.of("items", "cards"));
    return EntryCodec.entry("job-opened", body);
  }

  private static void assertMeans(OpenJob job, List<String> items, List<String> cards) {
    TagBook book = new TagBook(job.state(), engine -> java.util.Optional.empty());
    assertThat(job.state().parts()).hasSameSizeAs(items);
    for (int item = 1; item <= items.size(); item++) {
      CodeLookup found = book.find(new TagCode(TagType.PART, ENGINE, item, 1));
      Part part = ((CodeLookup.APart) found).part().part();
      assertThat(part.home().key()).isEqualTo(items.get(item - 1));
      assertThat(job.state().findOwner(part.home()).orElseThrow().item()).isEqualTo(item);
    }
    for (int card = 1; card <= cards.size(); card++) {
      TagCode code = new TagCode(TagType.PLACE_CARD, ENGINE, card, 1);
      Spot spot = ((CodeLookup.ASpot) book.find(code)).spot();
      assertThat(spot.key()).isEqualTo(cards.get(card - 1));
      assertThat(book.of(spot)).isEqualTo(code);
    }
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void aLogbookThatDoesNotSayGoesByTheFirstNumbering(Layout layout) throws IOException {
    List<String> items = Files.readAllLines(LISTS.resolve(layout.name() + "-all.txt"));
    List<String> cards = Files.readAllLines(LISTS.resolve(layout.name() + "-cards.txt"));
    try (OpenJob job = job(old(opened(layout)))) {
      assertMeans(job, items, cards);
    }
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void aNewLogbookSaysWhatEachNumberStandsFor(Layout layout) throws IOException {
    JsonNode body = EntryCodec.body(opened(layout));
    List<String> items = texts(body.path("items"));
    List<String> cards = texts(body.path("cards"));
    assertThat(items).hasSizeGreaterThan(90);
    assertThat(cards).hasSizeGreaterThan(28);
    try (OpenJob job = job(opened(layout))) {
      assertMeans(job, items, cards);
    }
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(each -> texts.add(each.asText()));
    return texts;
  }

  /** Whatever order a later program would give them: the job's own lists count. */
  @Test
  void theListsOfTheJobCountAndNoOrderOfTheProgram() {
    JobOpened plain = opened(ReadyLayouts.find("v8-odd-even").orElseThrow());
    for (int seed = 0; seed < 20; seed++) {
      List<Place> items = new ArrayList<>(plain.items());
      List<Spot> cards = new ArrayList<>(plain.cards());
      Collections.shuffle(items, new Random(seed));
      Collections.shuffle(cards, new Random(seed + 100L));
      JobOpened shuffled =
          new JobOpened(
              "engine", ENGINE, plain.layout(), plain.kinds(), plain.units(), items, cards);
      try (OpenJob job = job(shuffled)) {
        assertMeans(
            job, items.stream().map(Place::key).toList(), cards.stream().map(Spot::key).toList());
      }
    }
  }

  @Test
  void aListThatNamesAPlaceTwiceMakesNoJob() {
    JobOpened plain = opened(ReadyLayouts.find("inline-4").orElseThrow());
    List<Place> items = new ArrayList<>(plain.items());
    items.set(3, items.get(7));
    JobOpened twice =
        new JobOpened(
            "engine", ENGINE, plain.layout(), plain.kinds(), plain.units(), items, plain.cards());
    assertThatThrownBy(() -> job(twice))
        .isInstanceOf(LogbookException.class)
        .hasMessageContaining("is there twice");
  }

  /** This logbook was written by the first version and is never written anew. */
  @Test
  void theFirstDemoKeepsItsNumbers() throws IOException {
    List<String> items = Files.readAllLines(LISTS.resolve("v8-odd-even-all.txt"));
    try (OpenJob demo =
        new OpenJob(LogbookFile.read(Path.of("src", "test", "logbooks", "first-demo")), CLOCK)) {
      List<LoggedEntry> history = demo.history();
      assertThat(((JobOpened) history.get(0).entry()).items()).isEmpty();
      demo.state().parts().stream()
          .filter(part -> !part.part().fresh())
          .forEach(
              part -> {
                String key = part.part().home().key();
                List<String> tracked =
                    items.stream()
                        .filter(
                            one ->
                                demo.state().kinds().contains(Place.find(one).orElseThrow().kind()))
                        .toList();
                assertThat(tracked.get(part.part().item() - 1)).isEqualTo(key);
              });
    }
  }
}
