package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.LoggedEntry;
import wherefrom.job.PlaceState;
import wherefrom.job.change.Planning;
import wherefrom.job.decide.Deciding;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartOut;
import wherefrom.job.handling.Handling;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.shop.MachineShop;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.Cue;
import wherefrom.rules.WayOut;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** The first key of a stop does what cures it, and the same scan is then judged again. */
class WayOutTest {
  private final SampleJob sample = SampleJob.apart();
  private final int pushrod = sample.part("pushrod@3EX").item();
  private final PutTogetherModel model = new PutTogetherModel(sample.job);

  private void stop() {
    model.scan(sample.read(sample.tag("pushrod@3EX")));
    assertThat(model.scan(sample.read(sample.card("3EX")))).contains(Cue.STOP);
  }

  private void look(int item, String check, Look look) {
    new Inspecting(sample.job).answer(Subject.ofPart(item), check, look, "");
  }

  private PlaceState state() {
    return sample.state("pushrod@3EX");
  }

  /** To clear a part and to fit it are two acts: it is in the hand, and its card is scanned. */
  private void clearedThenFitted() {
    assertThat(model.stop()).isEmpty();
    assertThat(state()).isEqualTo(PlaceState.OUT);
    assertThat(model.stopped().waiting()).isZero();
    assertThat(sample.job.state().standingStop()).as("until it is judged again").isPresent();
    assertThat(model.scan(sample.read(sample.card("3EX")))).contains(Cue.RIGHT);
    assertThat(sample.job.state().standingStop()).isEmpty();
    fitted();
  }

  private void fitted() {
    assertThat(model.stop()).isEmpty();
    assertThat(model.answer().cue()).contains(Cue.RIGHT);
    assertThat(state()).isEqualTo(PlaceState.FITTED);
  }

  private long entries() {
    return sample.job.history().stream().map(LoggedEntry::sequence).distinct().count();
  }

  private void wrongPlace() {
    model.scan(sample.read(sample.tag("pushrod@3EX")));
    assertThat(model.scan(sample.read(sample.card("5EX")))).contains(Cue.STOP);
  }

  /** The stop names it only where the part could go in there now. */
  @Test
  void aWrongPlaceNamesTheOwnOneThatIsFreeAndItsCardFitsIt() {
    wrongPlace();
    assertThat(model.stopped().ownPlace()).contains(Place.find("pushrod@3EX").orElseThrow());
    assertThat(model.scan(sample.read(sample.card("3EX")))).contains(Cue.RIGHT);
    fitted();
  }

  @Test
  void anOwnPlaceThatIsTakenOrForbiddenIsNotOffered() {
    new wherefrom.job.puttogether.Fitting(sample.job)
        .fitOnPurpose(sample.part("pushrod@7EX"), sample.spot("3EX"), "matched pair");
    wrongPlace();
    assertThat(model.stopped().ownPlace()).isEmpty();
  }

  @Test
  void aStopOfAnotherKindNamesNoOwnPlace() {
    new Handling(sample.job).lost(pushrod, "");
    stop();
    assertThat(model.stopped().ownPlace()).isEmpty();
  }

  @Test
  void aLostPartIsFoundAndFits() {
    new Handling(sample.job).lost(pushrod, "");
    stop();
    assertThat(model.stopped().first()).isEqualTo(WayOut.FOUND);
    long before = entries();
    assertThat(StopWays.isHere(model, WayOut.FOUND)).isEmpty();
    clearedThenFitted();
    assertThat(entries()).as("two acts").isEqualTo(before + 2);
    model.act(wherefrom.parts.Action.UNDO);
    assertThat(state()).isEqualTo(PlaceState.OUT);
  }

  @Test
  void aPartThatIsBackFromWashingFits() {
    new Handling(sample.job).offForWashing(pushrod, 2);
    stop();
    assertThat(model.stopped().first()).isEqualTo(WayOut.BACK_FROM_WASHING);
    assertThat(StopWays.isHere(model, WayOut.BACK_FROM_WASHING)).isEmpty();
    clearedThenFitted();
  }

  @Test
  void aPartThatIsBackFromTheShopFits() {
    new MachineShop(sample.job).send(1, List.of(pushrod), "measure runout");
    stop();
    assertThat(model.stopped().first()).isEqualTo(WayOut.BACK_FROM_SHOP);
    assertThat(StopWays.isHere(model, WayOut.BACK_FROM_SHOP)).isEmpty();
    clearedThenFitted();
  }

  @Test
  void aShellUnderACapThatWasOffFitsAndTheCapIsOutAgain() {
    SampleJob caps = SampleJob.whole("v8-odd-even", EnumSet.allOf(PartKind.class));
    for (String key : List.of("rod-cap@R4L", "rod-shell@R4L")) {
      caps.job.record(new PartOut(caps.part(key).item()));
    }
    caps.job.record(
        new PartFitted(caps.part("rod-cap@R4L").item(), Place.find("rod-cap@R4L").orElseThrow()));
    PutTogetherModel shell = new PutTogetherModel(caps.job);
    shell.scan(caps.read(caps.tag("rod-shell@R4L")));
    assertThat(shell.scan(caps.read(caps.card("R4L")))).contains(Cue.STOP);
    assertThat(shell.stopped().first()).isEqualTo(WayOut.CAP_WAS_OFF);
    assertThat(StopWays.isHere(shell, WayOut.CAP_WAS_OFF)).isEmpty();
    assertThat(caps.state("rod-cap@R4L")).isEqualTo(PlaceState.OUT);
    assertThat(shell.scan(caps.read(caps.card("R4L")))).contains(Cue.RIGHT);
    assertThat(caps.state("rod-shell@R4L")).isEqualTo(PlaceState.FITTED);
  }

  @Test
  void aDoubtfulPartIsDecidedAboutAndFits() {
    look(pushrod, "pushrod-roll", Look.SUSPECT);
    stop();
    assertThat(model.stopped().first()).isEqualTo(WayOut.DECIDE);
    int before = sample.job.history().size();
    assertThat(model.leave(StopModel::again)).contains(Cue.STOP);
    assertThat(sample.job.history()).hasSize(before);
    new Deciding(sample.job).decide(pushrod, Decision.REUSE, "measured good");
    assertThat(model.leave(StopModel::again)).isEmpty();
    clearedThenFitted();
  }

  @Test
  void whereADecisionIsAskedOfEveryPartTheStartCountsThoseThatWait() {
    assertThat(model.decisionsWait()).isEmpty();
    new Deciding(sample.job).askEveryPart(true);
    PutTogetherModel asking = new PutTogetherModel(sample.job);
    assertThat(asking.answer().headline()).isEqualTo("74 parts wait for a decision");
    assertThat(asking.decisionsWait()).isPresent();
    asking.scan(sample.read(sample.tag("pushrod@3EX")));
    assertThat(asking.decisionsWait()).isEmpty();
    stop();
    assertThat(model.stopped().first()).isEqualTo(WayOut.DECIDE);
  }

  @Test
  void anOpenCheckIsAnsweredAndThePartFits() {
    new Planning(sample.job).make(Change.at(ChangeKind.GASKET_THICKNESS, ""));
    stop();
    assertThat(model.stopped().first()).isEqualTo(WayOut.DO_THE_CHECK);
    String check = model.stopped().check().orElseThrow().consequence().key();
    new Planning(sample.job).answer(check, Look.PASS, "");
    model.leave(StopModel::again);
    while (model.stopped().check().isPresent()) {
      String next = model.stopped().check().get().consequence().key();
      new Planning(sample.job).answer(next, Look.PASS, "");
      model.leave(StopModel::again);
    }
    clearedThenFitted();
  }

  private void fittedBut() {
    fittedBut(Look.FAIL);
  }

  private void fittedBut(Look seen) {
    model.scan(sample.read(sample.tag("pushrod@3EX")));
    model.scan(sample.read(sample.card("3EX")));
    look(pushrod, "pushrod-roll", seen);
    assertThat(state()).isEqualTo(PlaceState.FITTED_BUT);
    stop();
    assertThat(model.answer().headline()).isEqualTo("fitted, but");
    assertThat(model.stopped().isFittedBut()).isTrue();
    assertThat(model.stopped().canTakeOut()).isTrue();
  }

  @Test
  void aFittedPartThatSomethingStandsAgainstIsTakenOut() {
    fittedBut();
    int before = sample.job.history().size();
    model.leave(PutTogether::tookOut);
    assertThat(sample.job.history()).hasSize(before + 1);
    assertThat(state()).isEqualTo(PlaceState.OUT);
    assertThat(model.stop()).isEmpty();
    assertThat(sample.job.state().standingStop()).isEmpty();
    model.act(wherefrom.parts.Action.UNDO);
    assertThat(state()).isEqualTo(PlaceState.FITTED_BUT);
    assertThat(model.stop()).isPresent();
  }

  @Test
  void orItIsLeftThereWithAReason() {
    fittedBut(Look.SUSPECT);
    assertThat(model.stopped().canFitOnPurpose()).isTrue();
    model.chooseReason("measured better here");
    model.fitOnPurpose();
    assertThat(model.stop()).isEmpty();
    assertThat(state()).isEqualTo(PlaceState.FITTED);
  }

  @Test
  void whatMustBeNewIsLeftForNoReason() {
    fittedBut(Look.FAIL);
    assertThat(model.stopped().canFitOnPurpose()).isFalse();
    model.act(wherefrom.parts.Action.NEXT);
    assertThat(model.reason()).isEmpty();
    model.act(wherefrom.parts.Action.YES);
    assertThat(state()).isEqualTo(PlaceState.FITTED_BUT);
    assertThat(model.stop()).isPresent();
  }

  @Test
  void theStillMissingListCountsItApart() {
    fittedBut();
    MissingModel missing = new MissingModel(sample.job);
    MissingModel.SectionLine line =
        missing.sections().stream().filter(one -> one.fittedBut() > 0).findFirst().orElseThrow();
    assertThat(MissingModel.words(line))
        .isEqualTo("23 to fit, 1 in, but something stands against it");
    missing.takeOut(missing.fittedBut(line.section()).get(0).part());
    assertThat(missing.trouble()).isEmpty();
    assertThat(state()).isEqualTo(PlaceState.OUT);
  }

  @Test
  void inTheWindowTheKeyLeadsToTheDecisionAndBackToTheSameScan() {
    look(pushrod, "pushrod-roll", Look.SUSPECT);
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
          window.scan(sample.tag("pushrod@3EX"));
          window.scan(sample.card("3EX"));
          window.layOut();
          window.press("Decide");
          window.press("Reuse");
          window.press("measured good");
          window.press("Reuse it all the same");
          assertThat(window.shell.current()).isInstanceOf(PutTogetherScreen.class);
          assertThat(window.words()).contains("Now scan the place card");
          assertThat(sample.record("pushrod@3EX").where().state()).isEqualTo("out");
          window.scan(sample.card("3EX"));
          return window;
        });
    assertThat(sample.record("pushrod@3EX").where().state()).isEqualTo("fitted");
  }
}
