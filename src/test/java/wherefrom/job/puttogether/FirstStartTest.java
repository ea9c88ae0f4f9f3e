package wherefrom.job.puttogether;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.job.BenchJob;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.PlaceExcused;
import wherefrom.job.inspect.Castings;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;

class FirstStartTest {
  private final BenchJob bench = BenchJob.v8();
  private final FirstStart start = new FirstStart(bench.job);

  /** What every engine has open that nobody tested and that lies on the bench. */
  private static final List<String> BESIDE = List.of("Casting not tested", "Still to fit");

  private List<String> open() {
    return start.points().stream()
        .filter(FirstStart.Point::open)
        .filter(point -> !BESIDE.contains(point.heading()))
        .map(FirstStart.Point::words)
        .toList();
  }

  @Test
  void itIsDueOnceTheLastSectionIsClosed() {
    ToFit missing = new ToFit(bench.job);
    missing.places().forEach(place -> bench.record(new PlaceExcused(place, "later")));
    assertThat(start.isDue()).isFalse();
    missing.sections().forEach(section -> assertThat(missing.finish(section)).isTrue());
    assertThat(start.isDue()).isTrue();
  }

  @Test
  void openChecksAreNamedUntilTheyAreAnswered() {
    Planning planning = new Planning(bench.job);
    assertThat(open())
        .hasSize(2)
        .allMatch(words -> words.contains("lifter") || words.contains("foot"));
    planning.answer("R2:crown", Look.PASS, "");
    planning.answer("R2:spin", Look.PASS, "");
    planning.make(Change.of(ChangeKind.HOT_TANKED));
    assertThat(open()).containsExactly("See that every core plug and gallery plug is back in.");
    new Planning(bench.job).answer("R29:plugs-in", Look.PASS, "");
    assertThat(open()).isEmpty();
  }

  @Test
  void whatIsDoneByHandIsAlwaysNamedWithItsSource() {
    assertThat(start.points())
        .extracting(FirstStart.Point::heading)
        .contains("Prime the oil", "Turn it by hand");
    assertThat(start.points()).allSatisfy(point -> assertThat(point.source()).isNotBlank());
  }

  private List<String> headings() {
    return start.points().stream().map(FirstStart.Point::heading).toList();
  }

  @Test
  void aCastingThatNobodyTestedIsNamedUntilItIsTestedOrDecided() {
    assertThat(headings()).filteredOn("Casting not tested"::equals).hasSize(3);
    new Castings(bench.job).decide("block@", Decision.REUSE, "new");
    bench.record(new FeatureLooked("head@left", "head-crack", Look.PASS, ""));
    assertThat(headings()).filteredOn("Casting not tested"::equals).hasSize(1);
  }

  @Test
  void aLineIsTickedWithItsWordsAndCanBeOpenedAgain() {
    StartList list = new StartList(bench.job);
    int open = list.countOpen();
    assertThat(list.lines()).filteredOn(StartList.Line::isRocker).hasSize(16);
    list.tick("oil", " 30, zinc additive ", true);
    list.tick("rocker-3EX", "", true);
    assertThat(list.countOpen()).isEqualTo(open - 2);
    assertThat(list.find("oil").orElseThrow().words()).isEqualTo("30, zinc additive");
    list.tick("oil", "", false);
    assertThat(list.find("oil").orElseThrow().ticked()).isFalse();
    bench.job.undo();
    assertThat(list.find("oil").orElseThrow().ticked()).isTrue();
  }

  @Test
  void aLineThatTheListHasNotIsRefusedAndNothingIsLogged() {
    long before = bench.job.sequence();
    assertThatThrownBy(() -> new StartList(bench.job).tick("rocker-9EX", "", true))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("rocker-9EX");
    assertThat(bench.job.sequence()).isEqualTo(before);
  }
}
