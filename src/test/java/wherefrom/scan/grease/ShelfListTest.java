package wherefrom.scan.grease;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Sighting;
import wherefrom.parts.TagCode;
import wherefrom.scan.PipelineReader;
import wherefrom.scan.ScoreProbe;
import wherefrom.scan.match.AcceptanceBound;
import wherefrom.scan.match.ClosedSetMatcher;
import wherefrom.scan.match.IssuedSymbols;
import wherefrom.scan.match.SymbolMatch;

/** Tags of the other jobs of a shelf of fifty, asked for where nothing was read without them. */
class ShelfListTest {
  private static final int JOBS = 50;
  private static final int OPEN = 4_711_003;
  private static final List<TagCode> ISSUED = GreaseFrames.issued(OPEN);

  /** As many wrong readings in as many frames as of the open job's own list. */
  private static final int FRAMES = 200_000;

  private final PipelineReader reader = new PipelineReader();

  /** What the jobs of a shelf printed: parts and place cards. */
  private static List<TagCode> shelf(int number) {
    Set<TagCode> tags = new LinkedHashSet<>();
    for (int job = 0; job < JOBS; job++) {
      GreaseFrames.issued(engine(number, job)).stream()
          .filter(code -> code.engine() != 0)
          .forEach(tags::add);
    }
    return List.copyOf(tags);
  }

  private static int engine(int shelf, int job) {
    return 1_000_033 + 7_919 * (shelf * JOBS + job);
  }

  @Test
  void chanceScoresStayFarFromBeingAccepted() {
    expectLessThanOneWrongReading(8_300_000, 80, 2);
  }

  @Test
  @Tag("soak")
  void chanceScoresOfMoreScenesDoToo() {
    expectLessThanOneWrongReading(8_400_000, Integer.getInteger("shelf.scenes", 600), 6);
  }

  /** Scenes with nothing of the shelf, and with items and issues of its jobs that were not printed. */
  private static void expectLessThanOneWrongReading(int first, int scenes, int shelves) {
    List<IssuedSymbols> lists = new ArrayList<>();
    for (int shelf = 0; shelf < shelves; shelf++) {
      lists.add(new IssuedSymbols(shelf(shelf), ISSUED));
    }
    ScoreTail strangers = new ScoreTail("nothing of the shelf");
    ScoreTail relatives = new ScoreTail("of the shelf, not printed");
    for (int number = first; number < first + scenes; number++) {
      int shelf = number % shelves;
      int engine = engine(shelf, number % JOBS);
      ForeignScenes.Foreign foreign =
          ForeignScenes.of(number, engine, GreaseFrames.issued(engine).subList(0, 96));
      boolean related = foreign.kind().equals("neighbor") || foreign.kind().equals("retired");
      List<ScoreProbe.Asked> asked =
          ScoreProbe.still(foreign.scene().next(foreign.text()).image());
      for (int list = 0; list < shelves; list++) {
        ScoreTail tail = related && list == shelf ? relatives : strangers;
        tail.add(largest(asked, lists.get(list)));
      }
    }
    String report = strangers.report() + relatives.report();
    System.out.println(report);
    for (ScoreTail tail : List.of(strangers, relatives)) {
      assertThat(tail.shown()).isGreaterThan(scenes / 5);
      assertThat(tail.largest()).as(report).isNegative();
      assertThat(tail.acceptances() * FRAMES).as(report).isLessThan(1);
    }
  }

  private static double largest(List<ScoreProbe.Asked> asked, IssuedSymbols list) {
    ClosedSetMatcher matcher = new ClosedSetMatcher(list);
    double largest = Double.NEGATIVE_INFINITY;
    for (ScoreProbe.Asked one : asked) {
      Optional<SymbolMatch> match = matcher.find(one.grid()).filter(SymbolMatch::issued);
      if (one.pattern() >= AcceptanceBound.PATTERN && match.isPresent()) {
        largest = Math.max(largest, AcceptanceBound.marginAmong(match.get(), list.issued()));
      }
    }
    return largest;
  }

  /** Frames that are read neither by the open job's list nor by what the tag itself says. */
  @Test
  void aTagOfAnotherJobIsReadByItsListWhereNothingElseReadsIt() {
    List<TagCode> shelf = shelf(0);
    int added = 0;
    int tried = 0;
    for (int seed = 8_500; seed < 8_510; seed++) {
      for (Family family : List.of(Family.MARKER, Family.WRINKLED)) {
        TagCode code = GreaseFrames.pick(shelf, GreaseFrames.seed(family, 8, seed, 480));
        GreyImage image = GreaseFrames.frame(family, 8, seed, 480, code).image();
        if (reader.read(image, ISSUED).sightings().isEmpty()) {
          List<Sighting> sightings = reader.read(image, ISSUED, () -> shelf).sightings();
          tried++;
          added += sightings.size();
          assertThat(sightings).allMatch(one -> one.text().equals(code.digits()));
          assertThat(sightings).allMatch(one -> one.basis() == Sighting.Basis.DECODED);
        }
      }
    }
    assertThat(tried).isGreaterThan(2);
    assertThat(added).as("of %d", tried).isPositive();
  }

  /** Of the open job's own tags none is taken for another job's. */
  @Test
  void aTagOfTheOpenJobIsNeverAnotherJobs() {
    List<TagCode> shelf = shelf(0);
    for (Family family : List.of(Family.PAINT, Family.LIGHT, Family.HEAVY)) {
      for (int seed = 8_600; seed < 8_604; seed++) {
        TagCode code = GreaseFrames.pick(ISSUED, GreaseFrames.seed(family, 8, seed, 480));
        GreyImage image = GreaseFrames.frame(family, 8, seed, 480, code).image();
        assertThat(reader.read(image, ISSUED, () -> shelf).sightings())
            .allMatch(one -> one.text().equals(code.digits()));
      }
    }
  }

  /** What the list adds to each kind of damage. */
  @Test
  @Tag("bench")
  void whatTheListAdds() {
    List<TagCode> shelf = shelf(0);
    Map<Family, int[]> read = new EnumMap<>(Family.class);
    int wrong = 0;
    for (Family family : Family.values()) {
      int[] counts = read.computeIfAbsent(family, made -> new int[3]);
      for (int grade = 1; grade <= Family.GRADES; grade++) {
        for (int seed = 8_700; seed < 8_700 + Integer.getInteger("shelf.seeds", 2); seed++) {
          TagCode code = GreaseFrames.pick(shelf, GreaseFrames.seed(family, grade, seed, 720));
          GreyImage image = GreaseFrames.frame(family, grade, seed, 720, code).image();
          List<Sighting> alone = reader.read(image, ISSUED).sightings();
          List<Sighting> with =
              alone.isEmpty() ? reader.read(image, ISSUED, () -> shelf).sightings() : alone;
          counts[0]++;
          counts[1] += alone.stream().anyMatch(one -> one.text().equals(code.digits())) ? 1 : 0;
          counts[2] += with.stream().anyMatch(one -> one.text().equals(code.digits())) ? 1 : 0;
          wrong += (int) with.stream().filter(one -> !one.text().equals(code.digits())).count();
        }
      }
      System.out.printf("%s: of %d without the list %d, with it %d%n", family, counts[0], counts[1], counts[2]);
    }
    assertThat(wrong).isZero();
    assertThat(read.values()).allMatch(counts -> counts[2] >= counts[1]);
    assertThat(read.values().stream().mapToInt(counts -> counts[2] - counts[1]).sum()).isPositive();
  }
}
