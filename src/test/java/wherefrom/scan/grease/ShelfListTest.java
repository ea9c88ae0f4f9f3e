package wherefrom.scan.grease;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Sighting;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
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

  /** Other tags that are taken to lie where one lies, for each scene. */
  private static final int TURNS = 40;

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

  /** Few scenes, each as if other tags lay there: what the build has time for. */
  @Test
  void chanceScoresStayFarFromBeingAccepted() {
    expectLessThanOneWrongReading(8_300_000, 30);
  }

  @Test
  @Tag("soak")
  void chanceScoresOfMoreScenesDoToo() {
    expectLessThanOneWrongReading(8_400_000, Integer.getInteger("shelf.scenes", 300));
  }

  private static void expectLessThanOneWrongReading(int first, int scenes) {
    IssuedSymbols list = new IssuedSymbols(shelf(0), ISSUED);
    ClosedSetMatcher matcher = new ClosedSetMatcher(list);
    SplittableRandom random = new SplittableRandom(first);
    ScoreTail strangers = new ScoreTail("nothing of the shelf");
    ScoreTail relatives = new ScoreTail("of the shelf, not printed");
    for (int number = first; number < first + scenes; number++) {
      ForeignScenes.Foreign foreign = ForeignScenes.of(number, OPEN, ISSUED);
      List<ScoreProbe.Asked> asked = ScoreProbe.still(foreign.scene().next(foreign.text()).image());
      TagCode lies = TagCode.find(foreign.text()).orElse(ISSUED.get(0));
      for (int turn = 0; turn < TURNS; turn++) {
        strangers.add(largest(asked, lies, stranger(random), matcher, list.issued()));
        relatives.add(largest(asked, lies, relative(random), matcher, list.issued()));
      }
    }
    String report = strangers.report() + relatives.report();
    System.out.println(report);
    for (ScoreTail tail : List.of(strangers, relatives)) {
      assertThat(tail.largest()).as(report).isNegative();
      assertThat(tail.acceptances() * FRAMES).as(report).isLessThan(1);
    }
  }

  /** A part of an engine that is not on the shelf. */
  private static TagCode stranger(SplittableRandom random) {
    int engine = 5_000_000 + random.nextInt(1_000_000);
    return new TagCode(TagType.PART, engine, 1 + random.nextInt(96), 1);
  }

  /** An item that a job of the shelf never printed. */
  private static TagCode relative(SplittableRandom random) {
    int engine = engine(0, random.nextInt(JOBS));
    return new TagCode(TagType.PART, engine, 97 + random.nextInt(400), 1);
  }

  /** The largest margin of a frame, as if another tag lay where one lies. */
  private static double largest(
      List<ScoreProbe.Asked> asked,
      TagCode lies,
      TagCode other,
      ClosedSetMatcher matcher,
      int tags) {
    double largest = Double.NEGATIVE_INFINITY;
    for (ScoreProbe.Asked one : asked) {
      if (one.pattern() >= AcceptanceBound.PATTERN) {
        ScoreProbe.Asked turned = ScoreTailTest.relabelled(one, lies.digits(), other);
        Optional<SymbolMatch> match = matcher.find(turned.grid()).filter(SymbolMatch::issued);
        double margin =
            match
                .map(best -> AcceptanceBound.marginAmong(best, tags))
                .orElse(Double.NEGATIVE_INFINITY);
        largest = Math.max(largest, margin);
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
    for (int seed = 8_500; seed < 8_506; seed++) {
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
    assertThat(tried).isPositive();
    assertThat(added).as("of %d", tried).isPositive();
  }

  /** Of the open job's own tags none is taken for another job's. */
  @Test
  void aTagOfTheOpenJobIsNeverAnotherJobs() {
    List<TagCode> shelf = shelf(0);
    for (Family family : List.of(Family.PAINT, Family.LIGHT, Family.HEAVY)) {
      for (int seed = 8_600; seed < 8_602; seed++) {
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
      System.out.printf(
          "%s: of %d without the list %d, with it %d%n", family, counts[0], counts[1], counts[2]);
    }
    assertThat(wrong).isZero();
    assertThat(read.values()).allMatch(counts -> counts[2] >= counts[1]);
    assertThat(read.values().stream().mapToInt(counts -> counts[2] - counts[1]).sum()).isPositive();
  }
}
