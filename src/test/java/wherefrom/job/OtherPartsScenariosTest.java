package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Look;
import wherefrom.job.change.Planning;
import wherefrom.rules.Verdict;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.Effect;

/** Other springs, another crank, other pistons, as the person at the bench meets them. */
class OtherPartsScenariosTest {
  private final BenchJob bench = BenchJob.v8();
  private final Planning planning = new Planning(bench.job);

  private void made(ChangeKind kind) {
    assertThat(planning.make(Change.of(kind))).isInstanceOf(Planning.Answer.Made.class);
  }

  private void waitsUntilPassed(String place, String... checks) {
    for (String check : checks) {
      assertThat(bench.word(place)).as("before " + check).isEqualTo("not cleared");
      assertThat(planning.answer(check, Look.PASS, "seen"))
          .isInstanceOf(Planning.Answer.Answered.class);
    }
    assertThat(bench.word(place)).isEqualTo("right place");
  }

  private void isMustBeNew(String place, String rule) {
    Verdict verdict = bench.verdict(place);
    assertThat(verdict.word()).isEqualTo("must be new");
    assertThat(verdict.sentence())
        .contains("(rule " + rule.substring(1) + "; common practice, no source");
  }

  private List<String> openBeforeClosing() {
    return planning.openChecks().stream()
        .map(StandingRule::consequence)
        .filter(consequence -> consequence.effect() == Effect.CHECK_AFTER)
        .filter(consequence -> consequence.cause().kind() != ChangeKind.LIFTER_REUSED)
        .map(Consequence::sentence)
        .toList();
  }

  private List<String> toBuy() {
    return planning.standing().stream()
        .map(StandingRule::consequence)
        .filter(consequence -> consequence.pieces() > 0)
        .filter(consequence -> consequence.firstCause().kind() != ChangeKind.TAKEN_APART)
        .map(Consequence::headline)
        .toList();
  }

  @Test
  void r30UsedSpringIsStoppedWhenOtherSpringsWereChosenAndANewOneWaitsForItsChecks() {
    made(ChangeKind.SPRINGS_CHANGED);
    isMustBeNew("spring@3EX", "R30");
    assertThat(toBuy()).containsExactly("must be new: 16 valve springs");
    bench.replace("spring@3EX");
    waitsUntilPassed(
        "spring@3EX", "R30:spring-height", "R30:coil-bind", "R30:retainer-seal", "R30:loads");
    waitsUntilPassed("retainer@3EX", "R30:spring-seat");
    assertThat(openBeforeClosing())
        .containsExactly("Check that the springs clear the guides and the seals around them.");
  }

  @Test
  void r30SpringsThatAreOnlyShimmedMayStayAndAreCheckedAtTheirNewHeight() {
    made(ChangeKind.SPRINGS_SHIMMED);
    assertThat(toBuy()).isEmpty();
    waitsUntilPassed(
        "spring@8IN", "R30:spring-height", "R30:coil-bind", "R30:retainer-seal", "R30:loads");
    assertThat(bench.word("retainer@8IN")).isEqualTo("right place");
    assertThat(openBeforeClosing()).isEmpty();
  }

  @Test
  void r31NoUsedShellRunsOnAnotherCrank() {
    made(ChangeKind.CRANK_CHANGED);
    isMustBeNew("rod-shell@R3U", "R31");
    isMustBeNew("main-shell@M5L", "R31");
    assertThat(toBuy())
        .containsExactlyInAnyOrder("must be new: 26 rod shells, main shells", "buy new: crank");
    bench.replace("rod-shell@R3U");
    waitsUntilPassed("rod-shell@R3U", "R31:crank-journals");
    assertThat(bench.word("lifter@3EX")).isEqualTo("right place");
  }

  @Test
  void r31AnotherCrankIsNotClosedInBeforeEndPlayBalanceRodsAndRatioWereSeen() {
    made(ChangeKind.CRANK_CHANGED);
    assertThat(openBeforeClosing())
        .contains(
            "Check the oil clearance of each rod and main bearing.",
            "Check the crank's end play at the thrust bearing.",
            "Check the side play of the rods on their pins.",
            "Have the crank balanced with the rods and pistons it gets.",
            "Turn the engine by hand. Rods and their bolts must clear cam, block and pan.",
            "Work out the compression ratio again: the stroke is different.",
            "Measure the deck clearance of every piston.",
            "Check the clearance from piston to valve with clay or dial.");
  }

  @Test
  void r32OtherPistonsGoInAsASetWithNewRings() {
    made(ChangeKind.PISTONS_CHANGED);
    isMustBeNew("piston@B4", "R32");
    assertThat(toBuy())
        .containsExactlyInAnyOrder("must be new: 8 pistons", "buy new: 8 piston ring sets");
    bench.replace("piston@B4");
    waitsUntilPassed("piston@B4", "R32:piston-to-bore", "R32:pin-and-front");
    assertThat(openBeforeClosing())
        .containsExactlyInAnyOrder(
            "Set every ring gap in its own bore.",
            "Measure the deck clearance of every piston.",
            "Work out the compression ratio again: the crown is different.",
            "Check the clearance from piston to valve with clay or dial.",
            "Check the balance with the other pistons.");
  }

  @Test
  void whileOnlyPlannedNothingIsHeldUp() {
    planning.plan(Change.of(ChangeKind.CRANK_CHANGED));
    planning.plan(Change.of(ChangeKind.SPRINGS_CHANGED));
    planning.plan(Change.of(ChangeKind.PISTONS_CHANGED));
    assertThat(bench.word("rod-shell@R3U")).isEqualTo("right place");
    assertThat(bench.word("spring@3EX")).isEqualTo("right place");
    assertThat(bench.word("piston@B4")).isEqualTo("right place");
  }
}
