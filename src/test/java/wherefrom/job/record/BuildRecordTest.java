package wherefrom.job.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.job.BenchJob;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.AtAssembly;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BagMoved;
import wherefrom.job.entry.BigPartMoved;
import wherefrom.job.entry.BigPartsNamed;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartLost;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.inspect.DebrisBook;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.shop.MachineShop;
import wherefrom.parts.BigPartName;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.VerdictName;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.debris.DebrisLook;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.rules.debris.Opening;

class BuildRecordTest {
  private final BenchJob bench = BenchJob.v8();

  private RecordSection section(String title) {
    return BuildRecord.of(bench.job).sections().stream()
        .filter(section -> section.title().equals(title))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyPartStandsInTheRecordAndWhatNobodyCheckedStandsOut() {
    RecordSection parts = section("Parts");
    assertThat(parts.rows()).hasSize(bench.job.state().parts().size());
    assertThat(parts.rows()).allMatch(RecordSection.Row::open);
    bench.look("pushrod@3EX", "pushrod-roll", Look.PASS);
    bench.decide("pushrod@3EX", Decision.REUSE);
    RecordSection.Row row =
        section("Parts").rows().stream().filter(one -> !one.open()).findFirst().orElseThrow();
    assertThat(row.cells())
        .contains("cylinder 3, exhaust, pushrod", "Is it straight? pass", "reuse: test");
  }

  @Test
  void whatWasSeenAndNotedStandsThereInThePersonsWords() {
    bench.record(new LookRecorded(bench.item("lifter@6EX"), "lifter-foot", Look.FAIL, "hollow"));
    bench.record(new FeatureLooked("lobe@6EX", "lobe-look", Look.PASS, ""));
    bench.record(new FeatureLooked("lobe@6EX", "lobe-look", Look.SUSPECT, "edge broken"));
    bench.record(new FeatureLooked("lobe@1IN", "lobe-look", Look.PASS, ""));
    bench.record(new FeatureLooked("lobe@1EX", "lobe-look", Look.PASS, ""));
    bench.record(new NoteAdded(0, "stood in a boathouse"));
    assertThat(section("Seen").rows())
        .extracting(row -> row.cells().subList(0, 4))
        .containsExactly(
            List.of(
                "cylinder 6, exhaust, cam lobe", "Is the lobe whole?", "suspect", "edge broken"),
            List.of("cylinder 6, exhaust, lifter", "Is the foot still domed?", "fail", "hollow"),
            List.of("2 × cam lobe", "Is the lobe whole?", "pass", ""),
            List.of("the job", "note", "", "stood in a boathouse"));
    assertThat(section("Seen").rows())
        .extracting(RecordSection.Row::open)
        .containsExactly(true, true, false, false);
  }

  @Test
  void openChecksComeFirstWithTheChainOfReasons() {
    new Planning(bench.job).make(Change.at(ChangeKind.HEAD_MILLED, "left"));
    RecordSection first = BuildRecord.of(bench.job).sections().get(1);
    assertThat(first.title()).isEqualTo("NOT CHECKED");
    assertThat(first.rows())
        .anySatisfy(
            row ->
                assertThat(row.cells().get(1))
                    .isEqualTo(
                        "head milled, left bank, then valvetrain geometry changed, left bank"));
  }

  /** Two changes can ask for one check, which one answer settles: it is counted once. */
  @Test
  void aCheckThatTwoChangesAskForCountsOnce() {
    new Planning(bench.job).make(Change.at(ChangeKind.LARGER_INTAKE_VALVES, "left"));
    new Planning(bench.job).make(Change.at(ChangeKind.LARGER_EXHAUST_VALVES, "left"));
    int open = bench.job.state().rules().openChecks().size();
    assertThat(bench.job.state().rules().all())
        .filteredOn(rule -> rule.consequence().effect().isCheck())
        .hasSizeGreaterThan(open);
    assertThat(section(RecordTable.IN_SHORT.title()).rows())
        .filteredOn(row -> row.cells().get(0).startsWith("Checks"))
        .singleElement()
        .satisfies(row -> assertThat(row.cells()).endsWith("0 of " + open, Integer.toString(open)));
  }

  @Test
  void whatWasFittedOnPurposeIsNamedWithItsReason() {
    Place there = Place.find("pushrod@5EX").orElseThrow();
    bench.record(
        new PartFitted(
            bench.item("pushrod@3EX"),
            there,
            "no other left",
            Optional.of(VerdictName.WRONG_PLACE)));
    assertThat(section("Fitted on purpose").rows().get(0).cells())
        .containsExactly(
            "cylinder 3, exhaust, pushrod",
            "cylinder 5, exhaust, pushrod",
            "wrong place",
            "no other left");
  }

  @Test
  void answeredChecksStandThereInWordsWithTheReasonThatAsked() {
    Planning planning = new Planning(bench.job);
    DebrisBook book = new DebrisBook(bench.job);
    book.found(DebrisPlace.PAN, DebrisLook.MAGNETIC_FLAKES, "");
    book.opened(Opening.ALL_BEARINGS, Look.PASS, "even gray bands");
    bench.record(new FeatureLooked("lobe@6EX", "lobe-look", Look.FAIL, ""));
    planning.answer("R22:journals", Look.PASS, "done");
    planning.answer("R22:journals@6EX", Look.SUSPECT, "");
    assertThat(section("Changes and checks").rows())
        .extracting(row -> row.cells().get(0))
        .containsExactly(
            "opened for debris, All bearings: pass",
            "Did grit reach the bearings? Look at every journal (rule 22, debris in the oil): pass",
            "Did grit reach the bearings? Look at every journal (rule 22, cam lobe failed, cylinder"
                + " 6, exhaust, then debris in the oil, cylinder 6, exhaust): suspect");
    assertThat(section("Changes and checks").rows())
        .extracting(RecordSection.Row::open)
        .containsExactly(false, false, true);
  }

  @Test
  void aCheckWhoseChangeIsGoneHasNoKeyEither() {
    bench.record(new FeatureLooked("lobe@6EX", "lobe-look", Look.FAIL, ""));
    new Planning(bench.job).answer("R22:journals@6EX", Look.PASS, "");
    bench.record(new FeatureLooked("lobe@6EX", "lobe-look", Look.PASS, ""));
    assertThat(section("Changes and checks").rows().get(0).cells().get(0))
        .isEqualTo(
            "a check that nothing asks for any more: rule 22, journals, cylinder 6, exhaust: pass");
  }

  @Test
  void openPlansStandUnderTheChangesAsPlannedAndDroppedOnesDoNot() {
    Planning planning = new Planning(bench.job);
    planning.plan(Change.of(ChangeKind.NEW_FLAT_CAM));
    planning.plan(Change.at(ChangeKind.HEAD_MILLED, "left"));
    planning.plan(Change.at(ChangeKind.HEAD_MILLED, "right"));
    planning.drop(3, "straight");
    planning.carryOut(2);
    assertThat(section("Changes and checks").rows())
        .extracting(row -> row.cells().get(0))
        .containsExactly(
            "planned, not made: new flat-tappet cam", "done or found: head milled, left bank");
  }

  @Test
  void onlyAnOpenQuestionOrABadAnswerAboutTheMainsStandsOut() {
    DebrisBook book = new DebrisBook(bench.job);
    book.found(DebrisPlace.PAN, DebrisLook.MAGNETIC_FLAKES, "");
    RecordSection.Row open = section("Debris").rows().get(1);
    assertThat(open.cells().get(1)).startsWith("not answered");
    assertThat(open.open()).isTrue();
    book.opened(Opening.ALL_BEARINGS, Look.PASS, "");
    RecordSection.Row answered = section("Debris").rows().get(1);
    assertThat(answered.cells().get(1)).startsWith("no: ");
    assertThat(answered.open()).isFalse();
  }

  @Test
  void aFilterThatWasCutOpenIsNotAskedForAgainButANewOneIs() {
    DebrisBook book = new DebrisBook(bench.job);
    book.found(DebrisPlace.PAN, DebrisLook.MAGNETIC_FLAKES, "");
    assertThat(unchecked()).contains("rule 22: Cut the filter open; fit a new one.");
    book.opened(Opening.FILTER, Look.PASS, "");
    assertThat(unchecked())
        .noneMatch(words -> words.contains("Cut the filter open"))
        .anyMatch(
            words -> words.startsWith("rule 22: Fit a new filter. The old one was cut open on "));
    book.opened(Opening.FILTER, Look.NOT_LOOKED, "");
    assertThat(unchecked()).contains("rule 22: Cut the filter open; fit a new one.");
  }

  private List<String> unchecked() {
    return section("NOT CHECKED").rows().stream().map(row -> row.cells().get(0)).toList();
  }

  @Test
  void theDaysOfACylinderSayWhatWasSaidOfItsParts() {
    bench.record(new PartLost(bench.item("pushrod@3EX"), "rolled under the bench"));
    bench.record(new PartUnfitted(bench.item("rocker@3EX"), "it would not seat"));
    assertThat(
            BuildRecord.of(bench.job).sheets().orElseThrow().cylinders().stream()
                .flatMap(sheet -> sheet.events().stream())
                .flatMap(event -> event.told().stream()))
        .contains(
            "3 EX pushrod: lost: rolled under the bench",
            "3 EX rocker: taken out again: it would not seat");
  }

  @Test
  void whatWasSaidOfAFindStandsBesideIt() {
    DebrisBook book = new DebrisBook(bench.job);
    book.found(DebrisPlace.PAN, DebrisLook.PLASTIC, "three crumbs");
    book.found(DebrisPlace.PAN, DebrisLook.PLASTIC, "");
    book.found(DebrisPlace.PAN, DebrisLook.PLASTIC, "a fourth");
    assertThat(section("Debris").rows().get(0).cells().get(0))
        .endsWith(", oil pan: three crumbs; a fourth");
  }

  @Test
  void whyABigPartCameOffAllTheSameStandsBesideWhereItIs() {
    bench.record(new BigPartsNamed(1, List.of(BigPartName.own("spring tower"))));
    bench.record(new BigPartMoved(1, Whereabouts.OUT, "looked at, and it is right"));
    bench.record(new BagFilled(1, "tower bolts", 1, "", 4, List.of(), "", AtAssembly.NOT_SAID));
    bench.record(new BagMoved(1, Whereabouts.LOST, 0, "fell behind the bench"));
    assertThat(section("Bags and big parts").rows())
        .extracting(row -> row.cells().get(3))
        .contains("out, on the bench: looked at, and it is right", "lost: fell behind the bench");
  }

  @Test
  void everyRowHasAsManyCellsAsItsTableHasColumns() {
    new OfEverything(bench).runAll();
    for (RecordSection section : BuildRecord.of(bench.job).sections()) {
      for (RecordSection.Row row : section.rows()) {
        assertThat(row.cells()).as(section.title()).hasSize(section.columns().size());
      }
    }
  }

  /** Something of everything that has a table. */
  private record OfEverything(BenchJob bench) {
    void runAll() {
      new Planning(bench.job).make(Change.of(ChangeKind.HOT_TANKED));
      new Planning(bench.job).answer("R29:plugs-in", Look.PASS, "counted");
      new DebrisBook(bench.job).found(DebrisPlace.PAN, DebrisLook.PLASTIC, "");
      new MachineShop(bench.job).send(1, java.util.List.of(bench.item("valve@3EX")), "grind");
      new MachineShop(bench.job).add(1, "block", 1, "bore", "3.89", "0.0005", true);
      new MoneyBook(bench.job).note(0, "x", "", wherefrom.job.entry.CostState.PAID, "1", 0, "");
      new Instruments(bench.job)
          .list("mic", wherefrom.quantity.Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
      new Measuring(bench.job)
          .take(
              new Measuring.Entry(
                  wherefrom.inspection.Subject.ofPart(bench.item("pushrod@3EX")),
                  "pushrod-length",
                  "mic",
                  java.util.Map.of("length", java.util.List.of("8.0")),
                  false,
                  ""));
      bench.record(new wherefrom.job.entry.PhotoAdded(0, "abc.jpg", "front"));
    }
  }
}
