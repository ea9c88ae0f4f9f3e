package wherefrom.job.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Look;
import wherefrom.job.BenchJob;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.PlaceExcused;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;

class FirstStartTest {
  private final BenchJob bench = BenchJob.v8();
  private final FirstStart start = new FirstStart(bench.job);

  private List<String> open() {
    return start.points().stream()
        .filter(FirstStart.Point::open)
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
}
