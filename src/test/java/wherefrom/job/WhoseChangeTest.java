package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Look;
import wherefrom.job.change.Planning;
import wherefrom.job.handling.Handling;
import wherefrom.job.puttogether.Fitting;
import wherefrom.parts.Place;
import wherefrom.rules.Ban;
import wherefrom.rules.OpenCheck;
import wherefrom.rules.Verdict;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;

/**
 * Some changes go with a part wherever it sits, as a resized rod; others stay with block, head or
 * crank, and hold whatever sits there.
 */
class WhoseChangeTest {
  private final BenchJob bench = BenchJob.v8();
  private final Planning planning = new Planning(bench.job);

  private void made(ChangeKind kind, String where) {
    assertThat(planning.make(Change.at(kind, where))).isInstanceOf(Planning.Answer.Made.class);
  }

  /** The rules that forbid the part from one place at another, such as R20. */
  private List<String> bans(String partFrom, String at) {
    Place place = Place.find(at).orElseThrow();
    return bench.job.state().bench().listBans(bench.item(partFrom), place).stream()
        .map(Ban::rule)
        .toList();
  }

  private List<String> checks(String partFrom, String at) {
    Place place = Place.find(at).orElseThrow();
    return bench.job.state().bench().listOpenChecks(bench.item(partFrom), place).stream()
        .map(OpenCheck::key)
        .toList();
  }

  @Test
  void aResizedRodTakesNewShellsWhereverItGoes() {
    made(ChangeKind.ROD_RESIZED, "B3");
    assertThat(bans("rod-shell@R3U", "rod-shell@R5U")).contains("R20");
    assertThat(bans("rod-shell@R5U", "rod-shell@R3U")).isEmpty();
  }

  @Test
  void theHousingOfALostRodCapGoesWithItsRod() {
    bench.look("rod-cap@R3L", "rod-cap-mark", Look.FAIL);
    assertThat(bans("rod@R3U", "rod@R5U")).contains("R23");
    assertThat(bans("rod-cap@R3L", "rod-cap@R5L")).contains("R23");
    assertThat(bans("rod@R5U", "rod@R3U")).isEmpty();
  }

  @Test
  void theHousingOfALostMainCapStaysInTheBlock() {
    bench.look("main-cap@M3L", "main-cap-mark", Look.FAIL);
    assertThat(bans("main-shell@M4L", "main-shell@M3L")).contains("R23");
    assertThat(bans("main-cap@M4L", "main-cap@M3L")).contains("R23");
    assertThat(bans("main-shell@M3L", "main-shell@M4L")).isEmpty();
  }

  @Test
  void aValveJobIsOnTheHeadAndHoldsWhateverSpringSitsThere() {
    made(ChangeKind.VALVE_JOB, "left");
    assertThat(checks("spring@2IN", "spring@1IN")).contains("R12:installed-height@left");
    assertThat(checks("spring@1IN", "spring@2IN")).isEmpty();
  }

  /** The lobe that it goes on is the one that was measured. */
  @Test
  void aNewLifterFromTheBoxWaitsForTheLobeOfThePlaceThatItGoesInto() {
    bench.reuseAll();
    bench.replace("lifter@3EX");
    bench.replace("lifter@5EX");
    for (String check : checks("lifter@3EX", "lifter@3EX")) {
      planning.answer(check, Look.PASS, "measured");
    }
    assertThat(checks("lifter@3EX", "lifter@3EX")).isEmpty();
    assertThat(checks("lifter@3EX", "lifter@5EX")).contains("R4:lobe-lift@5EX");
    assertThat(checks("lifter@5EX", "lifter@3EX")).isEmpty();
    Fitting fitting = new Fitting(bench.job);
    assertThat(fitting.judge(bench.part("lifter@5EX"), Benches.spot("3EX"), false))
        .isInstanceOf(Verdict.RightPlace.class);
    assertThat(fitting.judge(bench.part("lifter@3EX"), Benches.spot("5EX"), false).word())
        .isEqualTo("not cleared");
  }

  /** A new intake valve is no exhaust valve: it stays what its tag says. */
  @Test
  void aNewPartThatIsOfNoUseElsewhereKeepsTheChecksOfItsOwnPlace() {
    bench.reuseAll();
    bench.replace("valve@3IN");
    assertThat(checks("valve@3IN", "valve@3EX")).contains("R13:seat@3IN");
  }

  /** Once it has run in one place it is of that place. */
  @Test
  void aNewLifterThatWasFittedOnceKeepsTheChecksOfItsPlace() {
    bench.reuseAll();
    bench.replace("lifter@3EX");
    bench.replace("lifter@5EX");
    new Fitting(bench.job).fitOnPurpose(bench.part("lifter@3EX"), Benches.spot("3EX"), "trial");
    new Handling(bench.job).tookOut(bench.item("lifter@3EX"), "trial over");
    assertThat(checks("lifter@3EX", "lifter@5EX")).contains("R4:lobe-lift@3EX");
  }
}
