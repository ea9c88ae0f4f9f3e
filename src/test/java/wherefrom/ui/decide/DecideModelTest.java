package wherefrom.ui.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.JobPartNames;
import wherefrom.job.Undone;
import wherefrom.job.decide.Deciding;
import wherefrom.job.decide.Settlement;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.handling.Handling;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.job.money.Replacement;
import wherefrom.job.puttogether.Fitting;
import wherefrom.parts.PartKind;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Dimension;
import wherefrom.rules.PartNames;
import wherefrom.ui.sample.SampleJob;

class DecideModelTest {
  private final SampleJob sample = SampleJob.apart();
  private final DecideModel model = new DecideModel(sample.job);

  private void look(String place, Look look) {
    Checks.of(sample.part(place).kind())
        .forEach(
            check ->
                sample.job.record(
                    new LookRecorded(sample.part(place).item(), check.key(), look, "")));
  }

  private DecidePartModel part(String place) {
    return new DecidePartModel(sample.job, sample.part(place).item());
  }

  private String verdict(String place) {
    return new Fitting(sample.job)
        .judge(sample.part(place), sample.part(place).home().spot(), false)
        .word();
  }

  @Test
  void theWordsBesideTheTitleNeverSayThatNothingIsOpenWhereRowsAre() {
    int all = sample.job.state().parts().size();
    assertThat(model.open()).isEqualTo(all + " may wait");
    look("pushrod@3EX", Look.SUSPECT);
    assertThat(model.open()).isEqualTo("1 to decide");
  }

  @Test
  void theKindsSayInTheSameWordsWhatAddsUpToTheTitle() {
    look("pushrod@3EX", Look.SUSPECT);
    look("pushrod@5EX", Look.FAIL);
    assertThat(model.groups().stream().mapToInt(DecideModel.Group::waiting).sum())
        .isEqualTo(model.waiting());
    DecideModel.Group pushrods =
        model.groups().stream()
            .filter(group -> group.kind() == PartKind.PUSHROD)
            .findFirst()
            .orElseThrow();
    assertThat(pushrods.words()).isEqualTo("2 to decide");
    assertThat(model.groups().get(0).words()).isEqualTo("16 may wait");
  }

  @Test
  void onlyWhatSomethingSpeaksAgainstIsHeldUp() {
    assertThat(model.waiting()).isZero();
    look("pushrod@3EX", Look.PASS);
    assertThat(model.waiting()).isZero();
    look("pushrod@3EX", Look.SUSPECT);
    assertThat(model.waiting()).isEqualTo(1);
    assertThat(model.title(model.next().orElseThrow())).isEqualTo("3 EX pushrod");
    new Deciding(sample.job).askEveryPart(true);
    assertThat(model.waiting()).isEqualTo(74);
  }

  private List<String> reasons(String part, Decision decision) {
    return part(part).reasons(decision).stream().map(DecidePartModel.Reason::words).toList();
  }

  /** What is asked when the key with these words is pressed. */
  private static Optional<String> asked(DecidePartModel model, Decision decision, String words) {
    return model.reasons(decision).stream()
        .filter(reason -> reason.words().equals(words))
        .findFirst()
        .flatMap(model::question);
  }

  @Test
  void noReasonIsOfferedThatTheRecordContradicts() {
    look("rocker@3EX", Look.SUSPECT);
    assertThat(reasons("rocker@3EX", Decision.REUSE))
        .contains("measured good")
        .doesNotContain("every test passed");
    assertThat(reasons("rocker@3EX", Decision.REPLACE))
        .contains("out of limit")
        .doesNotContain("a test failed", "a rule forbids it");
    look("rocker@3EX", Look.FAIL);
    assertThat(reasons("rocker@3EX", Decision.REPLACE)).contains("a test failed");
    look("pushrod@3EX", Look.PASS);
    assertThat(reasons("pushrod@3EX", Decision.REUSE)).contains("every test passed");
  }

  @Test
  void whatWasNotMeasuredIsAskedBeforeItIsCalledMeasured() {
    look("rocker@3EX", Look.SUSPECT);
    DecidePartModel rocker = part("rocker@3EX");
    assertThat(asked(rocker, Decision.REUSE, "measured good"))
        .hasValueSatisfying(
            asked ->
                assertThat(asked).startsWith("Nothing was measured: 3 EX rocker is suspect at "));
    assertThat(asked(rocker, Decision.REPLACE, "out of limit")).isPresent();
    assertThat(asked(rocker, Decision.REUSE, "good enough here")).isEmpty();
    assertThat(model.reasons(PartKind.ROCKER, Decision.REPLACE).usual())
        .doesNotContain("out of limit");
    SampleJob measured = SampleJob.apart();
    int rod = measured.part("pushrod@3EX").item();
    new Instruments(measured.job).list("FEELER", Dimension.LENGTH, "0.001", "0.001", "0.001");
    new Measuring(measured.job)
        .take(
            new Measuring.Entry(
                Subject.ofPart(rod),
                "pushrod-runout",
                "FEELER",
                Map.of("middle", List.of("0.002")),
                true,
                ""));
    assertThat(asked(new DecidePartModel(measured.job, rod), Decision.REUSE, "measured good"))
        .isEmpty();
  }

  private static void runout(SampleJob job, String read) {
    new Measuring(job.job)
        .take(
            new Measuring.Entry(
                Subject.ofPart(job.part("pushrod@3EX").item()),
                "pushrod-runout",
                "FEELER",
                Map.of("middle", List.of(read)),
                true,
                ""));
  }

  /** What is answered already is not asked again: each step leads to the next that settles it. */
  @Test
  void whatWouldSettleAPartIsNeverWhatIsDoneAlready() {
    Instruments tools = new Instruments(sample.job);
    tools.list("FEELER", Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
    DecidePartModel rod = part("pushrod@3EX");
    assertThat(rod.settling().way()).isEqualTo(Settlement.Way.INSPECT);
    sample.job.record(
        new LookRecorded(
            sample.part("pushrod@3EX").item(), "pushrod-roll", Look.SUSPECT, "it hops"));
    assertThat(rod.settling().way()).isEqualTo(Settlement.Way.MEASURE);
    assertThat(rod.lines().get(1).words()).endsWith("suspect. Measure it.");
    runout(sample, "0.0019");
    assertThat(rod.settling().way()).isEqualTo(Settlement.Way.TYPE_LIMIT);
    assertThat(rod.lines().get(1).words()).endsWith("It is measured: type its limit.");
    tools.limit("pushrod-runout", "value", "", "0.0020", "manual, page 6-12");
    assertThat(rod.settling().way()).isEqualTo(Settlement.Way.MEASURE_BETTER);
    assertThat(rod.settling().plan().orElseThrow().key()).isEqualTo("pushrod-runout");
    assertThat(rod.lines().get(1).words()).endsWith("Is it straight? suspect.");
  }

  /** Where no reading can tell, the person decides. */
  @Test
  void aDoubtThatNothingMeasuresIsDecided() {
    sample.job.record(
        new LookRecorded(sample.part("pushrod@3EX").item(), "pushrod-ends", Look.SUSPECT, ""));
    assertThat(part("pushrod@3EX").settling().way()).isEqualTo(Settlement.Way.DECIDE);
  }

  /** The stop and the page have one word for a reading too near its limit. */
  @Test
  void aReadingThatIsOpenIsUndecidedAtTheStopToo() {
    Instruments tools = new Instruments(sample.job);
    tools.list("FEELER", Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
    tools.limit("pushrod-runout", "value", "", "0.0020", "manual, page 6-12");
    runout(sample, "0.0019");
    assertThat(new JobPartNames(sample.job.state()).findFound(sample.part("pushrod@3EX")))
        .contains(new PartNames.Found("undecided", "Pushrod runout: undecided"));
  }

  @Test
  void nobodyMachinesAShell() {
    DecidePartModel shell = part("rod-shell@R1U");
    assertThat(shell.objection(Decision.MACHINE))
        .contains("A rod shell is never machined. Reuse it, or replace it.");
    assertThat(shell.decide(Decision.MACHINE, "out of limit, can be machined"))
        .isEqualTo("A rod shell is never machined. Reuse it, or replace it.");
    assertThat(shell.decision()).isEmpty();
    assertThat(part("rocker@3EX").objection(Decision.MACHINE)).isEmpty();
    assertThat(model.decideSet(PartKind.MAIN_SHELL, Decision.MACHINE, "all alike as a set"))
        .isEqualTo("A main shell is never machined. Reuse it, or replace it.");
  }

  @Test
  void aPartIsNotClearedUntilThePersonDecides() {
    look("pushrod@3EX", Look.PASS);
    DecidePartModel part = part("pushrod@3EX");
    assertThat(part.lines().get(0).heading()).isEqualTo("Not decided");
    assertThat(verdict("pushrod@3EX")).isEqualTo("right place");
    new Deciding(sample.job).askEveryPart(true);
    assertThat(part.lines().get(0).heading()).isEqualTo("Not cleared to fit");
    assertThat(part.lines().get(1).heading()).isEqualTo("Proposed: reuse");
    assertThat(verdict("pushrod@3EX")).isEqualTo("not cleared");
    part.decide(Decision.REUSE, "every test passed");
    assertThat(part.lines().get(0).heading()).isEqualTo("Decided: reuse");
    assertThat(part.lines().get(0).words()).isEqualTo("Because: every test passed.");
    assertThat(verdict("pushrod@3EX")).isEqualTo("right place");
  }

  @Test
  void theProposalSaysItsReasonsWithTheirSource() {
    look("main-shell@M2L", Look.FAIL);
    assertThat(part("main-shell@M2L").lines().get(1).heading()).isEqualTo("Proposed: replace");
    assertThat(part("main-shell@M2L").lines().get(1).words()).startsWith("Rule 22: ");
    assertThat(part("main-shell@M2L").lines().get(1).source())
        .isEqualTo("TM 9-2815-237-34, bearings, before 2-11.");
  }

  @Test
  void theProposedReasonComesFirstAmongTheReasonsOnlyWhereTheDecisionIsTheProposedOne() {
    look("pushrod@3EX", Look.PASS);
    assertThat(reasons("pushrod@3EX", Decision.REUSE).get(0)).startsWith("Its place is known");
    assertThat(reasons("pushrod@3EX", Decision.REPLACE)).startsWith("out of limit");
    assertThat(reasons("pushrod@3EX", Decision.REPLACE)).doesNotContain("other");
  }

  @Test
  void reuseOfASetLeavesOutThePartsForWhichItIsNotProposed() {
    look("rocker@1EX", Look.PASS);
    look("rocker@1IN", Look.PASS);
    look("rocker@3EX", Look.SUSPECT);
    assertThat(model.decideSet(PartKind.ROCKER, Decision.REUSE, "every test passed"))
        .isEqualTo("2 rockers: reuse. 14 are left to decide one by one.");
    assertThat(sample.record("rocker@3EX").decision()).isEmpty();
    assertThat(model.decideSet(PartKind.PUSHROD, Decision.REUSE, "x"))
        .startsWith("Nothing is decided");
  }

  @Test
  void replacingASetTakesEveryUsedPartOfIt() {
    new Handling(sample.job).replace(sample.part("lifter@3EX").item(), "worn out");
    assertThat(model.decideSet(PartKind.LIFTER, Decision.REPLACE, "replaced as a set"))
        .isEqualTo("15 lifters: replace.");
    assertThat(model.replacements())
        .singleElement()
        .satisfies(line -> assertThat(line.pieces()).isEqualTo(15));
  }

  @Test
  void whatCannotBeTakenOnIsRefusedAsAWhole() {
    model.decideSet(PartKind.LIFTER, Decision.REPLACE, "replaced as a set");
    Replacement line = model.replacements().get(0);
    Replacement without =
        new Replacement(
            line.kind(),
            line.side(),
            line.places(),
            line.pieces(),
            line.size(),
            line.sizeWords(),
            " ");
    int before = sample.job.history().size();
    assertThatThrownBy(() -> model.takeOn(without))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("Say why the part is replaced.");
    assertThat(sample.job.history()).hasSize(before);
    assertThat(model.takeOn(line)).isEqualTo("New parts: 16. Print their tags.");
  }

  /** A set is sold; only the part that was condemned is retired for it, and the screen says so. */
  @Test
  void whatIsHereRetiresTheCondemnedAndNoOther() {
    part("lifter@3EX").decide(Decision.REPLACE, "worn");
    Replacement one = model.replacements().get(0);
    assertThat(model.retires(one)).isEqualTo("the old one at 3 EX is retired, no other");
    part("lifter@3IN").decide(Decision.REPLACE, "worn");
    Replacement two = model.replacements().get(0);
    assertThat(model.retires(two)).isEqualTo("2 old are retired, no others");
    model.takeOn(two);
    assertThat(sample.job.state().parts())
        .filteredOn(record -> record.part().kind() == PartKind.LIFTER)
        .filteredOn(record -> record.where() == Whereabouts.RETIRED)
        .hasSize(2);
    model.decideSet(PartKind.LIFTER, Decision.REPLACE, "replaced as a set");
    assertThat(model.retires(model.replacements().get(0))).isEqualTo("all 14 old are retired");
  }

  @Test
  void oneTakingBackTakesTheWholeSetDecisionBack() {
    look("rocker@1EX", Look.PASS);
    part("lifter@3EX").decide(Decision.REUSE, "every test passed");
    int entries = sample.job.history().size();
    model.decideSet(PartKind.LIFTER, Decision.REPLACE, "replaced as a set");
    assertThat(sample.job.history()).hasSize(entries + 1);
    assertThat(part("lifter@5EX").lines().get(0).heading()).isEqualTo("Decided: replace");
    assertThat(sample.job.undo()).isInstanceOf(Undone.TookBack.class);
    assertThat(sample.record("lifter@5EX").decision()).isEmpty();
    assertThat(part("lifter@3EX").lines().get(0).words()).isEqualTo("Because: every test passed.");
    assertThat(model.replacements()).isEmpty();
  }

  @Test
  void aBannedPartCannotBeDecidedForReuseAndTheSentenceNamesTheRule() {
    look("main-shell@M2L", Look.FAIL);
    assertThat(part("main-shell@M1L").decide(Decision.REUSE, "it looks good"))
        .contains("(rule 22; ");
    assertThat(part("main-shell@M1L").decision()).isEqualTo(Optional.empty());
  }

  @Test
  void groupsTellHowManyAreOpenAndWhatIsProposedForThem() {
    look("rocker@1EX", Look.PASS);
    DecideModel.Group rockers = model.groups().get(0);
    assertThat(rockers.undecided()).isEqualTo(16);
    assertThat(model.undecided(PartKind.ROCKER)).isEqualTo(16);
    assertThat(model.proposed(PartKind.ROCKER)).isEqualTo("proposed for 1 of 16");
    assertThat(model.groups()).extracting(DecideModel.Group::kind).contains(PartKind.MAIN_SHELL);
  }

  @Test
  void manyPlacesAreShortened() {
    List<DecideModel.Line> lines = model.lines(PartKind.LIFTER);
    assertThat(DecideModel.places(lines.stream().map(line -> line.part().home()).toList()))
        .endsWith("and 10 more");
  }
}
