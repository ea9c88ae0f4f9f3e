package wherefrom.ui.takeapart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Look;
import wherefrom.job.Caution;
import wherefrom.job.handling.Handling;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.parts.Action;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.rules.Cue;
import wherefrom.ui.sample.SampleJob;

class TakeApartModelTest {
  private final SampleJob sample = SampleJob.whole();
  private OutOrder order = OutOrder.CYLINDER;
  private final TakeApartModel model = new TakeApartModel(sample.job, () -> order);
  private final PartRemarks remarks = new PartRemarks(sample.job);

  private String next() {
    return model.next().map(part -> model.name(part.part()).words()).orElse("");
  }

  private String out() {
    return model.out().map(part -> model.name(part.part()).words()).orElse("");
  }

  private static Place place(String key) {
    return Place.find(key).orElseThrow();
  }

  private String where(String placeKey) {
    return sample.record(placeKey).where().state();
  }

  @Test
  void oneScanAPartAndTheNextFollows() {
    assertThat(next()).isEqualTo("1 IN rocker");
    assertThat(model.scan(sample.read(sample.tag("rocker@3EX")))).contains(Cue.RIGHT);
    assertThat(out()).isEqualTo("3 EX rocker");
    assertThat(next()).isEqualTo("3 EX pushrod");
    assertThat(model.progress()).isEqualTo("1 of 74 out");
    model.scan(sample.read(sample.tag("pushrod@3EX")));
    assertThat(out()).isEqualTo("3 EX pushrod");
    assertThat(next()).isEqualTo("3 IN rocker");
    assertThat(model.subject()).as("not the next one").contains(sample.part("pushrod@3EX"));
  }

  @Test
  void theOrderIsAskedForAnewEachTime() {
    model.scan(sample.read(sample.tag("rocker@3EX")));
    order = OutOrder.KIND;
    assertThat(next()).isEqualTo("3 IN rocker");
  }

  @Test
  void theKeyAndATapOnTheNextPlaceLogItsPartOut() {
    assertThat(model.nextIsOut()).contains(Cue.RIGHT);
    assertThat(where("rocker@1IN")).isEqualTo("out");
    assertThat(model.tap(place("pushrod@1IN"))).contains(Cue.RIGHT);
    assertThat(where("pushrod@1IN")).isEqualTo("out");
  }

  @Test
  void aTapElsewhereAsksBeforeItLogs() {
    int before = sample.job.history().size();
    assertThat(model.tap(place("rocker@5EX"))).contains(Cue.ASK);
    assertThat(model.answer().orElseThrow().lines()).containsExactly("5 EX rocker is out?");
    assertThat(model.answer().orElseThrow().small()).isEqualTo("Next would be 1 IN rocker.");
    assertThat(sample.job.history()).hasSize(before);
    model.dismiss();
    assertThat(model.answer()).isEmpty();
    assertThat(model.confirm()).isEmpty();
    model.tap(place("rocker@5EX"));
    assertThat(model.act(Action.YES)).contains(Cue.RIGHT);
    assertThat(where("rocker@5EX")).isEqualTo("out");
    assertThat(model.doubt()).isEmpty();
  }

  @Test
  void aPushrodUnderItsRockerSaysWhatMustBeOffFirst() {
    model.tap(place("pushrod@5EX"));
    assertThat(model.answer().orElseThrow().lines()).containsExactly("First off: 5 EX rocker");
    assertThat(model.answer().orElseThrow().small())
        .isEqualTo("It is over the 5 EX pushrod. Are both out?");
    int before = sample.job.history().size();
    model.confirm();
    assertThat(where("rocker@5EX")).isEqualTo("out");
    assertThat(where("pushrod@5EX")).isEqualTo("out");
    long steps =
        sample.job.history().stream().skip(before).map(one -> one.sequence()).distinct().count();
    assertThat(steps).as("one act").isEqualTo(1);
    model.act(Action.UNDO);
    assertThat(where("rocker@5EX")).isEqualTo(where("rocker@1IN"));
  }

  @Test
  void aShellUnderItsCapSaysSoToo() {
    SampleJob capped = SampleJob.whole("v8-odd-even", EnumSet.allOf(PartKind.class));
    TakeApartModel all = new TakeApartModel(capped.job, () -> OutOrder.CYLINDER);
    all.tap(place("rod-shell@R4L"));
    assertThat(all.answer().orElseThrow().lines()).containsExactly("First off: Rod 4, cap");
  }

  @Test
  void aScannedPushrodWhoseRockerWasNotScannedIsOutAndTheRockerIsAskedFor() {
    assertThat(model.scan(sample.read(sample.tag("pushrod@3EX")))).contains(Cue.RIGHT);
    assertThat(model.takeSaid()).isEqualTo("Scan the 3 EX rocker too.");
    assertThat(model.takeSaid()).isEmpty();
    assertThat(next()).isEqualTo("3 EX rocker");
  }

  @Test
  void aScanAnswersForItselfWhileATapIsAskedAbout() {
    model.tap(place("rocker@5EX"));
    model.scan(sample.read(sample.tag("rocker@1IN")));
    assertThat(model.act(Action.YES)).isEmpty();
    assertThat(where("rocker@5EX")).isNotEqualTo("out");
  }

  @Test
  void whatCannotBeWrittenHasItsOwnAnswer() {
    model.scan(sample.read(sample.tag("rocker@1IN")));
    sample.logbook.fail("The disk is full. Make room, then scan again.");
    assertThat(model.scan(sample.read(sample.tag("pushrod@1IN")))).contains(Cue.ASK);
    assertThat(model.answer().orElseThrow().headline()).isEqualTo("Not kept");
    assertThat(model.answer().orElseThrow().small())
        .isEqualTo("The disk is full. Make room, then scan again.");
  }

  @Test
  void aPartThatIsOutAlreadyHasItsPanelAgainAndIsNotLogged() {
    model.scan(sample.read(sample.tag("rocker@1IN")));
    int before = sample.job.history().size();
    assertThat(model.scan(sample.read(sample.tag("rocker@1IN")))).isEmpty();
    assertThat(model.takeSaid()).isEqualTo("Already out: 1 IN rocker is out, on the bench.");
    assertThat(out()).isEqualTo("1 IN rocker");
    assertThat(model.outWords()).contains("ALREADY OUT 1 IN rocker");
    model.scan(sample.read(sample.tag("rocker@3IN")));
    assertThat(model.outWords()).contains("OUT 3 IN rocker");
    assertThat(sample.job.history()).hasSize(before + 1);
  }

  /** Who scans another part while one is asked about hears that the first was not noted. */
  @Test
  void aQuestionThatAnotherScanEndsIsSaidToBeDropped() {
    model.tap(place("rocker@5EX"));
    model.scan(sample.read(sample.tag("rocker@1IN")));
    assertThat(model.takeSaid()).isEqualTo("Not noted as out: 5 EX rocker.");
    model.tap(place("rocker@5EX"));
    model.scan(sample.read(sample.tag("rocker@5EX")));
    assertThat(model.takeSaid()).doesNotContain("Not noted");
  }

  @Test
  void aFittedOrLostPartHasNoPanelAndIsNotSaidToBeOut() {
    model.scan(sample.read(sample.tag("rocker@1IN")));
    Part pushrod = sample.part("pushrod@3EX");
    model.scan(sample.read(sample.tag("pushrod@3EX")));
    new Fitting(sample.job).fit(pushrod, pushrod.home().spot(), false);
    new Handling(sample.job).lost(sample.part("rocker@1IN").item(), "");
    assertThat(model.scan(sample.read(sample.tag("pushrod@3EX")))).contains(Cue.ASK);
    assertThat(out()).isEmpty();
    assertThat(model.answer().orElseThrow().headline()).isEqualTo("Fitted");
    assertThat(model.answer().orElseThrow().lines()).containsExactly("3 EX pushrod");
    assertThat(model.answer().orElseThrow().small())
        .isEqualTo("It is fitted. On its page press Taken out again.");
    assertThat(model.scan(sample.read(sample.tag("rocker@1IN")))).contains(Cue.ASK);
    assertThat(out()).isEmpty();
    assertThat(model.answer().orElseThrow().small())
        .isEqualTo("It is marked lost. On its page press It is found.");
    assertThat(where("rocker@1IN")).isEqualTo("lost");
    assertThat(where("pushrod@3EX")).isEqualTo("fitted");
  }

  @Test
  void whatCameOutStandsUntilThatIsTakenBack() {
    model.scan(sample.read(sample.tag("rocker@1IN")));
    remarks.note(sample.part("rocker@1IN"), "bent");
    model.act(Action.UNDO);
    assertThat(model.takeSaid()).startsWith("Undone: ");
    assertThat(where("rocker@1IN")).isEqualTo("out");
    assertThat(out()).isEqualTo("1 IN rocker");
    model.act(Action.UNDO);
    assertThat(out()).isEmpty();
  }

  @Test
  void aSkippedPartComesBackWhenAllOthersAreOut() {
    model.act(Action.SKIP);
    assertThat(next()).isEqualTo("1 EX rocker");
    sample.job.state().parts().stream()
        .map(part -> part.part())
        .filter(part -> part.item() != 1)
        .toList()
        .forEach(part -> model.scan(sample.read(part.code(SampleJob.ENGINE).digits())));
    assertThat(next()).isEqualTo("1 IN rocker");
  }

  @Test
  void aTagOfAnotherEngineStops() {
    String other = new TagCode(TagType.PART, SampleJob.OTHER_ENGINE, 7, 1).digits();
    assertThat(model.scan(sample.read(other))).contains(Cue.STOP);
    assertThat(model.answer().orElseThrow().small()).contains("Gray six");
    model.scan(sample.read(sample.tag("rocker@1IN")));
    assertThat(model.answer()).isEmpty();
  }

  @Test
  void keysAreAboutThePartThatIsShown() {
    assertThat(model.subject()).contains(sample.part("rocker@1IN"));
    model.scan(sample.read(sample.tag("pushrod@3EX")));
    assertThat(model.subject()).contains(sample.part("pushrod@3EX"));
    model.act(Action.UNDO);
    assertThat(model.subject()).contains(sample.part("rocker@1IN"));
  }

  @Test
  void aRemarkSaysWhatItWasPutOn() {
    Part part = sample.part("pushrod@3EX");
    assertThat(remarks.note(part, "bent")).isEqualTo("Noted on 3 EX pushrod: bent.");
    assertThat(remarks.pieces(part, "2")).isEqualTo("2 pieces: 3 EX pushrod.");
    assertThat(remarks.pieces(part, "")).doesNotContain("3 EX pushrod");
    assertThat(remarks.suspect(part, remarks.checks(part).get(0)))
        .isEqualTo("Suspect: 3 EX pushrod. It hops a little, or light flickers under the middle.");
    assertThat(sample.record("pushrod@3EX").remarks()).hasSize(1);
    assertThat(sample.record("pushrod@3EX").part().pieces()).isEqualTo(2);
    assertThat(sample.record("pushrod@3EX").looks()).containsValue(Look.SUSPECT);
  }

  @Test
  void cautionsStandOnTheirStep() {
    assertThat(model.cautions()).contains(Caution.LIFTER_RISES).doesNotContain(Caution.HOIST);
  }

  @Test
  void placesAreNamedToBeReadFromAfar() {
    SampleJob capped = SampleJob.whole("v8-odd-even", EnumSet.allOf(PartKind.class));
    assertThat(
            capped.job.state().places().stream()
                .map(place -> PartName.of(capped.job.state().layout(), place).words()))
        .contains(
            "3 EX pushrod",
            "Rod 4, lower shell",
            "Rod 4, cap",
            "Rod 4",
            "Main 2, upper shell",
            "Cylinder 4, piston",
            "Cam bearing 2");
  }

  /** A hand over the tag for a moment answers nothing. */
  @Test
  void whatTheCameraAsksEndsNoQuestion() {
    model.tap(place("pushrod@5EX"));
    assertThat(model.doubt()).isPresent();
    model.ask("Hold the tag closer.");
    assertThat(model.doubt()).isEmpty();
    model.act(Action.YES);
    assertThat(where("pushrod@5EX")).isEqualTo("in");
    assertThat(model.doubt()).isPresent();
    model.ask("Hold the tag closer.");
    model.ask("");
    assertThat(model.doubt()).isPresent();
  }
}
