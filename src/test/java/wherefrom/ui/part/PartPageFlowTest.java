package wherefrom.ui.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.Bags;
import wherefrom.job.bags.BigParts;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.AtAssembly;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.handling.Handling;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.shelf.JobDay;
import wherefrom.job.shelf.Standing;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.Cue;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.RefusedScreen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.VerdictSounds;
import wherefrom.ui.changes.ConsequenceScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** What a part's page leads to, and what a place card says there, on every day of the job. */
class PartPageFlowTest {
  private static final String PUSHROD = "pushrod@3EX";

  private SampleJob sample = SampleJob.apart();
  private SampleWindow window;

  private void inWindow(Runnable deed) {
    Toolkit.on(
        () -> {
          if (window == null) {
            window = new SampleWindow(96, 100);
            window.shell.context().open(sample.job);
          }
          deed.run();
          window.layOut();
          return 0;
        });
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

  private void press(String... keys) {
    inWindow(() -> List.of(keys).forEach(window::press));
  }

  /** Something is to be decided, and nothing goes in yet. */
  private void inspecting() {
    new Inspecting(sample.job)
        .answer(
            Subject.ofPart(sample.part("pushrod@7IN").item()), "pushrod-roll", Look.SUSPECT, "");
    assertThat(Standing.of(sample.job).day()).isEqualTo(JobDay.INSPECT);
  }

  private void thickerGasket() {
    new Planning(sample.job).make(Change.at(ChangeKind.GASKET_THICKNESS, ""));
  }

  private long entries() {
    return sample.job.history().size();
  }

  private Whereabouts where(String part) {
    return sample.record(part).where();
  }

  @Test
  void anOpenCheckIsTheWayOnWhileInspecting() {
    inspecting();
    thickerGasket();
    page(PUSHROD);
    press("Do the check");
    assertThat(window.shell.current()).isInstanceOf(ConsequenceScreen.class);
    press("Pass");
    assertThat(window.shell.current()).isInstanceOf(PartScreen.class);
    assertThat(window.words()).doesNotContain("Do the check");
  }

  @Test
  void anOpenCheckIsReachedWhateverElseComesFirst() {
    thickerGasket();
    new Handling(sample.job).offForWashing(sample.part(PUSHROD).item(), 2);
    page(PUSHROD);
    assertThat(window.words()).contains("It is back").doesNotContain("Do the check");
    press("More", "Do the check");
    assertThat(window.words()).contains("Check before fitting: pushrods");
  }

  @Test
  void aPartThatNoCheckSpeaksOfOffersNone() {
    thickerGasket();
    page("main-shell@M2U");
    assertThat(window.words()).doesNotContain("Do the check");
    press("More");
    assertThat(window.words()).doesNotContain("Do the check");
  }

  @Test
  void aPartThatIsInWhenACheckComesUpLeadsToIt() {
    new Fitting(sample.job).fit(sample.part(PUSHROD), sample.spot("3EX"), false);
    thickerGasket();
    page(PUSHROD);
    press("Do the check");
    assertThat(window.shell.current()).isInstanceOf(ConsequenceScreen.class);
  }

  @Test
  void beforeAUsedPartGoesBackItsDecisionComesBeforeANewPart() {
    new Planning(sample.job).make(Change.at(ChangeKind.PUSHROD_BENT, "3EX"));
    page(PUSHROD);
    assertThat(window.words()).contains("Decide: replace").doesNotContain("Get a new part");
  }

  @Test
  void theCardOfItsOwnPlaceMatchesAndNothingIsRecorded() {
    inspecting();
    page(PUSHROD);
    long before = entries();
    inWindow(() -> window.scan(sample.card("3EX")));
    assertThat(window.shell.current()).isInstanceOf(PartScreen.class);
    assertThat(window.shell.message()).isEqualTo("It matches: it came out of 3 EX.");
    assertThat(entries()).isEqualTo(before);
    assertThat(where(PUSHROD)).isEqualTo(Whereabouts.OUT);
  }

  @Test
  void theCardOfAnotherPlaceIsAnsweredOverTheScreenWithASound() {
    inspecting();
    List<Cue> heard = new ArrayList<>();
    inWindow(
        () ->
            window.sounds =
                new VerdictSounds() {
                  @Override
                  public void play(Cue cue) {
                    heard.add(cue);
                  }

                  @Override
                  public void hush() {}
                });
    page(PUSHROD);
    long before = entries();
    inWindow(() -> window.scan(sample.card("5EX")));
    assertThat(window.shell.current()).isInstanceOf(RefusedScreen.class);
    assertThat(window.words())
        .contains("NOT ITS PLACE", "The card is of 5 EX.", "It belongs at cylinder 3, exhaust")
        .doesNotContain("STOP");
    assertThat(heard).containsExactly(Cue.ASK);
    assertThat(entries()).isEqualTo(before);
  }

  @Test
  void whileTakingApartACardTellsWhereThePartIsAndBelongs() {
    sample = SampleJob.whole();
    page(PUSHROD);
    inWindow(() -> window.scan(sample.card("3EX")));
    assertThat(window.shell.message()).isEqualTo("It matches: it is still in the engine at 3 EX.");
    inWindow(() -> window.scan(sample.card("4EX")));
    assertThat(window.words()).contains("NOT ITS PLACE");
    assertThat(where(PUSHROD)).isEqualTo(Whereabouts.IN_ENGINE);
  }

  @Test
  void aNewPartIsComparedWithThePlaceItIsFor() {
    inspecting();
    new Handling(sample.job).replace(sample.part(PUSHROD).item(), "worn out");
    page(PUSHROD);
    inWindow(() -> window.scan(sample.card("3EX")));
    assertThat(window.shell.message()).isEqualTo("It matches: it goes to 3 EX.");
  }

  @Test
  void whatIsBackFromWashingIsAskedWhetherItIsClean() {
    new Handling(sample.job).offForWashing(sample.part(PUSHROD).item(), 2);
    page(PUSHROD);
    press("It is back");
    assertThat(window.words()).contains("Is it clean and dry?", "it stays off for washing");
    assertThat(where(PUSHROD)).isEqualTo(Whereabouts.WASHING);
    press("No");
    assertThat(where(PUSHROD)).isEqualTo(Whereabouts.WASHING);
    press("More", "Back from washing", "Yes");
    assertThat(where(PUSHROD)).isEqualTo(Whereabouts.OUT);
  }

  @Test
  void aBigPartAndABagThatAreBackAreAskedTheSame() {
    BigParts parts = new BigParts(sample.job);
    parts.nameUsual();
    int head =
        BagBook.of(sample.job.state()).bigParts().stream()
            .filter(one -> one.words().equals("left head"))
            .findFirst()
            .orElseThrow()
            .number();
    parts.off(head, "for the test");
    parts.move(head, Whereabouts.WASHING, "");
    inWindow(() -> window.shell.context().navigator().show(ScreenId.BIG_PART, head));
    press("It is back");
    assertThat(window.words()).contains("Is it clean and dry?");
    assertThat(BagBook.of(sample.job.state()).findBigPart(head).orElseThrow().where())
        .isEqualTo(Whereabouts.WASHING);
    press("Yes");
    assertThat(BagBook.of(sample.job.state()).findBigPart(head).orElseThrow().where())
        .isEqualTo(Whereabouts.OUT);

    Bags bags = new Bags(sample.job);
    bags.fill(new BagFilled(1, "bolts", 0, "", 6, List.of(), "", AtAssembly.NOT_SAID));
    bags.move(1, Whereabouts.AT_SHOP, 0, "");
    inWindow(() -> window.shell.context().navigator().show(ScreenId.BAG, 1));
    press("It is back");
    assertThat(window.words()).contains("Is the work on it done?");
    press("Yes");
    assertThat(BagBook.of(sample.job.state()).findBag(1).orElseThrow().where())
        .isEqualTo(Whereabouts.OUT);
  }

  @Test
  void onePressRetiresNoPart() {
    new Planning(sample.job).make(Change.at(ChangeKind.PUSHROD_BENT, "3EX"));
    new Fitting(sample.job).fit(sample.part("main-shell@M1U"), sample.spot("M1U"), false);
    int old = sample.part(PUSHROD).item();
    page(PUSHROD);
    long before = entries();
    press("Get a new part");
    assertThat(window.words()).startsWith("must be new worn out").contains("Why a new part?");
    assertThat(entries()).isEqualTo(before);
    press("Back");
    assertThat(sample.part(PUSHROD).item()).isEqualTo(old);
    press("Get a new part", "must be new");
    assertThat(sample.job.state().getPart(old).where()).isEqualTo(Whereabouts.RETIRED);
  }
}
