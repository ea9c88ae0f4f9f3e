package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.PlaceState;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.handling.Handling;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.shop.MachineShop;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/**
 * A stop waits from before, and somebody comes into putting together from elsewhere with another
 * part: nobody is at the place of the stop, so nothing is judged there and nothing logged.
 */
class StopNobodyCausedTest {
  private final SampleJob sample = SampleJob.apart();
  private final SampleWindow window = Toolkit.on(this::opened);
  private final long stops = stops();

  private SampleWindow opened() {
    new Fitting(sample.job).fit(sample.part("rod-shell@R8L"), sample.spot("R7L"), false);
    SampleWindow made = new SampleWindow(96, 100);
    made.shell.context().open(sample.job);
    made.layOut();
    return made;
  }

  private long stops() {
    return sample.job.history().stream().filter(it -> it.entry() instanceof StopGiven).count();
  }

  private void inWindow(Runnable deed) {
    Toolkit.on(
        () -> {
          deed.run();
          window.layOut();
          return 0;
        });
  }

  private void goesTogether() {
    new Fitting(sample.job).fit(sample.part("main-shell@M1U"), sample.spot("M1U"), false);
  }

  private void page(String part) {
    inWindow(
        () ->
            window
                .shell
                .context()
                .navigator()
                .show(ScreenId.PART_IN_HAND, sample.part(part).item()));
  }

  private void asksForThePlace() {
    assertThat(window.words()).contains("Now scan the place card").doesNotContain("STOP");
    assertThat(stops()).isEqualTo(stops);
  }

  private void isIn(String part) {
    assertThat(window.words()).contains("RIGHT PLACE", "A stop waits");
    assertThat(stops()).isEqualTo(stops);
    assertThat(sample.state(part)).isEqualTo(PlaceState.FITTED);
  }

  @Test
  void putItBackAsksForThePlaceOfThePart() {
    page("pushrod@7IN");
    inWindow(() -> window.press("Put it back"));
    asksForThePlace();
    inWindow(() -> window.scan(sample.card("7IN")));
    isIn("pushrod@7IN");
  }

  @Test
  void aPlaceCardOnThePageOfAPartJudgesThatPartThere() {
    page("pushrod@7IN");
    inWindow(() -> window.scan(sample.card("7IN")));
    isIn("pushrod@7IN");
  }

  @Test
  void aTagFromTheFirstScreensThenItsCardIsRightAtOnce() {
    for (ScreenId first : new ScreenId[] {ScreenId.JOB_HOME, ScreenId.BENCH_MAP}) {
      String part = "pushrod@" + (first.ordinal() % 8 + 1) + "IN";
      inWindow(
          () -> {
            window.shell.context().navigator().show(first);
            window.scan(sample.tag(part));
            window.scan(sample.card(part.substring(part.indexOf('@') + 1)));
          });
      isIn(part);
    }
  }

  /** Even where its screen was left open, with the stop on it. */
  @Test
  void aStopThatWasSeenIsLeftBehindAllTheSame() {
    inWindow(() -> window.shell.context().navigator().show(ScreenId.PUT_TOGETHER));
    assertThat(window.words()).contains("STOP");
    page("pushrod@7IN");
    inWindow(() -> window.press("Put it back"));
    asksForThePlace();
  }

  @Test
  void theStoppedPartItselfIsAskedForItsPlaceToo() {
    page("rod-shell@R8L");
    inWindow(() -> window.press("Put it back"));
    asksForThePlace();
    inWindow(() -> window.scan(sample.card("R8L")));
    assertThat(window.words()).contains("RIGHT PLACE").doesNotContain("A stop waits");
    assertThat(stops()).isEqualTo(stops);
  }

  /** What was said of the part before is gone, in its letters as well. */
  @Test
  void theRightPlaceThatSolvesTheStopSaysNothingOfIt() {
    page("rod-shell@R8L");
    inWindow(() -> window.scan(sample.card("R8L")));
    assertThat(window.words()).contains("RIGHT PLACE").doesNotContain("A stop waits");
  }

  /** A message stands below the cause; Escape, which writes nothing, says nothing. */
  @Test
  void theCauseOfAStopStaysBesideWhatIsSaid() {
    inWindow(
        () -> {
          window.shell.context().say("5 IN pushrod: reuse.");
          window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
        });
    String cause = "The right part is";
    assertThat(window.words()).contains("STOP", cause).doesNotContain("5 IN pushrod: reuse.");
    inWindow(() -> window.shell.context().say("Not read."));
    assertThat(window.words()).contains("STOP", cause, "Not read.");
  }

  @Test
  void ofSeveralChecksTheStopSaysWhichItIs() {
    Planning planning = new Planning(sample.job);
    planning.make(Change.at(ChangeKind.GASKET_THICKNESS, ""));
    planning.make(Change.at(ChangeKind.LIFT_INCREASED, ""));
    planning.make(Change.at(ChangeKind.ROCKER_RATIO, ""));
    goesTogether();
    page("pushrod@3EX");
    inWindow(() -> window.scan(sample.card("3EX")));
    assertThat(window.words()).containsPattern("Check 1 of [2-9]\\.");
    inWindow(
        () -> {
          window.press("Do the check");
          window.press("Pass");
        });
    assertThat(window.words()).contains("STOP").containsPattern("Check 2 of [2-9]\\.");
  }

  @Test
  void whatMustBeNewLeadsToANewPartAndIsAskedBeforeTheOldOneIsRetired() {
    new Planning(sample.job).make(Change.at(ChangeKind.PUSHROD_BENT, "3EX"));
    goesTogether();
    page("pushrod@3EX");
    int old = sample.part("pushrod@3EX").item();
    inWindow(() -> window.press("Get a new part"));
    assertThat(window.words()).startsWith("must be new ").contains("Why a new part?");
    assertThat(sample.job.state().getPart(old).where()).isEqualTo(Whereabouts.OUT);
    inWindow(() -> window.press("must be new"));
    assertThat(sample.job.state().getPart(old).where()).isEqualTo(Whereabouts.RETIRED);
    assertThat(sample.job.state().getPart(sample.part("pushrod@3EX").item()).part().fresh())
        .isTrue();
  }

  @Test
  void theLifeOfAPartBeginsNoLineWithAColon() {
    page("rod-shell@R8L");
    assertThat(window.words()).contains("wrong place, at rod 7").doesNotContain(" : ", ", : ");
  }

  @Test
  void fromTheMachineShopItsPageLeadsOn() {
    new MachineShop(sample.job).send(1, List.of(sample.part("pushrod@7IN").item()), "runout");
    page("pushrod@7IN");
    inWindow(
        () -> {
          window.press("It is back");
          window.press("Yes");
        });
    assertThat(sample.job.state().getPart(sample.part("pushrod@7IN").item()).where())
        .isEqualTo(Whereabouts.OUT);
    assertThat(window.words()).contains("Put it back");
  }

  @Test
  void whatIsAwayIsJudgedByItsPlaceCardOnItsPage() {
    new Handling(sample.job).offForWashing(sample.part("pushrod@7IN").item(), 2);
    page("pushrod@7IN");
    assertThat(window.words()).contains("It is back");
    inWindow(() -> window.scan(sample.card("7IN")));
    assertThat(window.words()).contains("STOP", "washing");
  }

  @Test
  void aFittedPartIsTakenOutAgainByTheTagOfItsPage() {
    new Fitting(sample.job).fit(sample.part("pushrod@7IN"), sample.spot("7IN"), false);
    page("pushrod@7IN");
    inWindow(() -> window.press("Taken out again"));
    assertThat(sample.job.state().getPart(sample.part("pushrod@7IN").item()).where())
        .isEqualTo(Whereabouts.OUT);
  }
}
