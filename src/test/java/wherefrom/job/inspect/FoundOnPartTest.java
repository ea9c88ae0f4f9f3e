package wherefrom.job.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.BenchJob;
import wherefrom.job.EntryItems;
import wherefrom.job.LoggedEntry;
import wherefrom.job.decide.Deciding;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.inspect.FoundOnPart.Standing;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.quantity.Dimension;

/** Nobody looked, looked and good, undecided: three things, never told as one. */
class FoundOnPartTest {
  private final BenchJob bench = BenchJob.v8();
  private final int item = bench.item("pushrod@3EX");

  private FoundOnPart found() {
    return FoundOnPart.of(bench.job, item);
  }

  private void passAll(int part) {
    for (CheckCard card : new Inspecting(bench.job).cards(Subject.ofPart(part))) {
      new Inspecting(bench.job).answer(Subject.ofPart(part), card.check().key(), Look.PASS, "");
    }
  }

  private void measure(String length) {
    Instruments tools = new Instruments(bench.job);
    tools.list("mic", Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
    tools.limit("pushrod-length", "value", "7.9990", "8.0010", "own example");
    new Measuring(bench.job)
        .take(
            new Measuring.Entry(
                Subject.ofPart(item),
                "pushrod-length",
                "mic",
                Map.of("length", List.of(length)),
                true,
                ""));
  }

  @Test
  void nobodyLookedIsNotNothingFound() {
    assertThat(found().standing()).isEqualTo(Standing.NOT_LOOKED);
    assertThat(found().words()).isEqualTo("Not looked at yet.");
  }

  @Test
  void aPassWithTestsOpenIsNotAllOfThem() {
    List<CheckCard> cards = new Inspecting(bench.job).cards(Subject.ofPart(item));
    new Inspecting(bench.job)
        .answer(Subject.ofPart(item), cards.get(0).check().key(), Look.PASS, "");
    assertThat(found().standing()).isEqualTo(Standing.PARTLY);
    assertThat(found().words())
        .startsWith("Good so far: " + (cards.size() - 1) + " test")
        .endsWith(" open.");
  }

  @Test
  void everyTestPassedIsNothingFound() {
    passAll(item);
    assertThat(found())
        .isEqualTo(new FoundOnPart(Standing.NOTHING, "Nothing was found against it."));
  }

  @Test
  void anUndecidedReadingIsAFindingThoughEveryTestPassed() {
    passAll(item);
    measure("8.0010");
    assertThat(found().standing()).isEqualTo(Standing.DOUBTFUL);
    assertThat(found().words()).endsWith(": undecided");
  }

  @Test
  void aRejectedReadingOutweighsASuspectLook() {
    String check = new Inspecting(bench.job).cards(Subject.ofPart(item)).get(0).check().key();
    new Inspecting(bench.job).answer(Subject.ofPart(item), check, Look.SUSPECT, "");
    measure("8.0100");
    assertThat(found().standing()).isEqualTo(Standing.FAILED);
    assertThat(found().words()).endsWith(": reject");
  }

  /** That it was seen in taking apart does not stand in the place of what somebody wrote. */
  @Test
  void whatSomebodyWroteStandsBesideTheLookInTakingApart() {
    String check = new Inspecting(bench.job).cards(Subject.ofPart(item)).get(0).check().key();
    new Inspecting(bench.job)
        .answer(Subject.ofPart(item), check, Look.SUSPECT, Inspecting.AS_IT_CAME_OUT);
    assertThat(found().words()).endsWith(" suspect").doesNotContain("Note");
    bench.record(new NoteAdded(item, "tip worn"));
    assertThat(found().words()).endsWith(" suspect. Note: tip worn");
  }

  @Test
  void measuringStandsInThePartsLife() {
    measure("8.0000");
    assertThat(bench.job.state().standing().stream().map(LoggedEntry::entry))
        .filteredOn(entry -> EntryItems.of(entry).contains(item))
        .extracting(entry -> entry.getClass().getSimpleName())
        .contains("ReadingsTaken");
  }

  /** A flat lifter has no wheel to look at: all its own tests are all its tests. */
  @Test
  void aLifterNeedsOnlyTheTestsOfItsType() {
    int lifter = bench.item("lifter@3EX");
    passAll(lifter);
    assertThat(FoundOnPart.of(bench.job, lifter).standing()).isEqualTo(Standing.NOTHING);
    assertThat(new Deciding(bench.job).propose(lifter).decision())
        .isEqualTo(Optional.of(Decision.REUSE));
  }
}
