package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.change.Planning;
import wherefrom.job.decide.Deciding;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Dimension;
import wherefrom.rules.Verdict;

/**
 * A used flat lifter goes back only with a foot that is still domed (Mitsubishi Montero, Service
 * Manual, 1998, general engine overhaul, Lifters).
 */
class LifterFootTest {
  private static final String PLACE = "lifter@3EX";
  private final BenchJob bench = BenchJob.v8();
  private final int item = bench.item(PLACE);

  private void look(Look look) {
    new Inspecting(bench.job).answer(Subject.ofPart(item), "lifter-foot", look, "");
  }

  private void reuse() {
    new Deciding(bench.job).decide(item, Decision.REUSE, "own lobe");
  }

  private void crown(String figure) {
    Instruments tools = new Instruments(bench.job);
    tools.list("dial", Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
    tools.limit("lifter-crown", "value", "0.0010", "", "this engine's manual, p. 41");
    Measuring.Entry entry =
        new Measuring.Entry(
            Subject.ofPart(item),
            "lifter-crown",
            "dial",
            Map.of("crown", List.of(figure)),
            false,
            "");
    assertThat(new Measuring(bench.job).take(entry)).isInstanceOf(Measuring.Answer.Kept.class);
  }

  @Test
  void neverLookedAtTheCheckStandsOpenWhateverIsDecided() {
    assertThat(openChecks()).contains("R2:crown");
    reuse();
    assertThat(openChecks()).contains("R2:crown");
    assertThat(bench.verdict(PLACE)).isInstanceOf(Verdict.RightPlace.class);
  }

  private List<String> openChecks() {
    return new Planning(bench.job)
        .openChecks().stream().map(rule -> rule.consequence().key()).toList();
  }

  @Test
  void aPassedFootClearsIt() {
    look(Look.PASS);
    reuse();
    assertThat(bench.verdict(PLACE)).isInstanceOf(Verdict.RightPlace.class);
  }

  @Test
  void anAcceptedCrownClearsASuspectFoot() {
    look(Look.SUSPECT);
    crown("0.0020");
    reuse();
    assertThat(bench.verdict(PLACE)).isInstanceOf(Verdict.RightPlace.class);
  }

  @Test
  void aWornFootMustBeNewWhateverWasDecided() {
    look(Look.PASS);
    reuse();
    look(Look.FAIL);
    assertThat(bench.verdict(PLACE)).isInstanceOf(Verdict.MustBeNew.class);
    assertThat(new Deciding(bench.job).decide(item, Decision.REUSE, "again"))
        .isInstanceOf(Deciding.Answer.Refused.class);
  }

  @Test
  void aRejectedCrownMustBeNewToo() {
    look(Look.PASS);
    reuse();
    crown("0.0002");
    assertThat(bench.verdict(PLACE)).isInstanceOf(Verdict.MustBeNew.class);
  }

  @Test
  void anUndecidedCrownDoesNotClearIt() {
    reuse();
    crown("0.0010");
    assertThat(bench.verdict(PLACE)).isInstanceOf(Verdict.NotCleared.class);
  }

  /** Every used foot was seen; a new lifter has run nowhere. */
  @Test
  void theCheckOfTheSetIsDoneOnceEveryUsedFootIsKnownToBeDomed() {
    everyFootBut(PLACE);
    assertThat(openChecks()).contains("R2:crown");
    look(Look.SUSPECT);
    assertThat(openChecks()).contains("R2:crown");
    crown("0.0020");
    assertThat(openChecks()).doesNotContain("R2:crown");
  }

  @Test
  void nothingThatIsMeasuredMakesAFailedFootGood() {
    everyFootBut(PLACE);
    look(Look.FAIL);
    crown("0.0020");
    assertThat(openChecks()).contains("R2:crown");
    bench.replace(PLACE);
    assertThat(openChecks()).doesNotContain("R2:crown");
  }

  private void everyFootBut(String place) {
    for (PartRecord record : List.copyOf(bench.job.state().parts())) {
      if (record.part().kind() == PartKind.LIFTER && record.part().item() != bench.item(place)) {
        bench.look(record.part().home().key(), "lifter-foot", Look.PASS);
      }
    }
  }

  @Test
  void aRollerLifterHasNoFoot() {
    BenchJob roller = BenchJob.rollerV8();
    new Deciding(roller.job).decide(roller.item(PLACE), Decision.REUSE, "wheel is good");
    assertThat(roller.verdict(PLACE)).isInstanceOf(Verdict.RightPlace.class);
  }
}
