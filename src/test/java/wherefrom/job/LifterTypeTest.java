package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.change.Planning;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.puttogether.Fitting;
import wherefrom.rules.Misplaced;
import wherefrom.rules.Verdict;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;

/** What a roller lifter is asked, and what it is not. */
class LifterTypeTest {
  private static List<String> checks(BenchJob bench, String place) {
    return new Inspecting(bench.job)
        .cards(Subject.ofPart(bench.item(place))).stream().map(card -> card.check().key()).toList();
  }

  @Test
  void aRollerIsNotAskedForItsFootNorAFlatLifterForItsWheel() {
    BenchJob roller = BenchJob.rollerV8();
    assertThat(checks(roller, "lifter@3EX"))
        .contains("lifter-wheel", "lifter-sink")
        .doesNotContain("lifter-foot");
    assertThat(checks(BenchJob.v8(), "lifter@3EX"))
        .contains("lifter-foot", "lifter-sink")
        .doesNotContain("lifter-wheel");
    assertThat(
            new Inspecting(roller.job)
                .answer(
                    Subject.ofPart(roller.item("lifter@3EX")), "lifter-foot", Look.FAIL, "flat"))
        .isInstanceOf(Inspecting.Answer.Refused.class);
  }

  @Test
  void aNewRollerInAnEngineThatCameWithFlatLiftersIsARoller() {
    BenchJob bench = BenchJob.v8();
    new Planning(bench.job).make(Change.of(ChangeKind.FLAT_TO_ROLLER));
    assertThat(checks(bench, "lifter@3EX")).contains("lifter-foot");
    bench.replace("lifter@3EX");
    assertThat(checks(bench, "lifter@3EX")).contains("lifter-wheel").doesNotContain("lifter-foot");
  }

  @Test
  void aTurnedRollerLifterSaysHowItLies() {
    BenchJob roller = BenchJob.rollerV8();
    Verdict turned =
        new Fitting(roller.job)
            .judge(roller.part("lifter@3EX"), roller.part("lifter@3EX").home().spot(), true);
    assertThat(turned).isInstanceOf(Misplaced.WrongEnd.class);
    assertThat(turned.sentence()).contains("same way around").doesNotContain(": .");
  }

  @Test
  void copperOnAShellIsAFail() {
    for (String check : List.of("rod-shell-face", "main-shell-face")) {
      assertThat(Checks.find(check).orElseThrow().fail()).startsWith("Copper shows");
      assertThat(Checks.find(check).orElseThrow().suspect()).doesNotContain("Copper");
    }
  }
}
