package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.PlaceState;
import wherefrom.job.Untagged;
import wherefrom.job.puttogether.Fitting;
import wherefrom.parts.Action;
import wherefrom.parts.Place;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.engine.CylinderPageScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/**
 * A part's page that a finger opened says which part is meant, not which is in the hand: nothing
 * goes in from there until its tag was read, or is said to be gone.
 */
class NamedByATapTest {
  private static final String PUSHROD = "pushrod@3EX";
  private static final String ASKED = "Scan the 3 EX pushrod";

  private final SampleJob sample = SampleJob.apart();
  private SampleWindow window;

  /** Something is in already: the job goes together. */
  private void page(ScreenId page) {
    new Fitting(sample.job).fit(sample.part("lifter@3EX"), sample.spot("3EX"), false);
    window = new SampleWindow(96, 100);
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(page, sample.part(PUSHROD).item());
    window.layOut();
  }

  private void press(String... keys) {
    for (String key : List.of(keys)) {
      window.press(key);
      window.layOut();
    }
  }

  private void scan(String digits) {
    window.scan(digits);
    window.layOut();
  }

  private void asksForTheTag() {
    assertThat(window.words()).contains(ASKED, "No tag on it");
    assertThat(sample.state(PUSHROD)).isEqualTo(PlaceState.OUT);
  }

  private void isProven() {
    assertThat(window.words()).contains("RIGHT PLACE");
    assertThat(sample.state(PUSHROD)).isEqualTo(PlaceState.FITTED);
    assertThat(Untagged.places(sample.job.state())).isEmpty();
  }

  private static Place place() {
    return Place.find(PUSHROD).orElseThrow();
  }

  @Test
  void itsTagIsAskedForBeforeItsPlace() {
    Toolkit.on(
        () -> {
          page(ScreenId.PART);
          long entries = sample.job.history().size();
          press("Put it back");
          asksForTheTag();
          scan(sample.tag(PUSHROD));
          assertThat(window.words()).contains("Now scan the place card");
          assertThat(sample.job.history()).hasSize((int) entries);
          scan(sample.card("3EX"));
          isProven();
          return 0;
        });
  }

  @Test
  void itsPlaceCardAloneFitsNothing() {
    Toolkit.on(
        () -> {
          page(ScreenId.PART);
          press("Put it back");
          scan(sample.card("3EX"));
          asksForTheTag();
          scan(sample.tag(PUSHROD));
          isProven();
          return 0;
        });
  }

  @Test
  void norDoesItsPlaceCardOnThePage() {
    Toolkit.on(
        () -> {
          page(ScreenId.PART);
          scan(sample.card("3EX"));
          asksForTheTag();
          scan(sample.tag("pushrod@5EX"));
          assertThat(window.words()).contains("STOP");
          assertThat(sample.state(PUSHROD)).isEqualTo(PlaceState.OUT);
          return 0;
        });
  }

  /** It is said to have none, and is recorded so. */
  @Test
  void withoutATagItIsNoProvenOne() {
    Toolkit.on(
        () -> {
          page(ScreenId.PART);
          press("Put it back", "No tag on it", "It lay as the 3 EX pushrod", "Put it in without");
          assertThat(window.words()).contains("no tag on it", "Now scan the place card");
          scan(sample.card("3EX"));
          assertThat(window.words()).contains("NO TAG ON IT").doesNotContain("RIGHT PLACE");
          assertThat(Untagged.places(sample.job.state())).containsExactly(place());
          return 0;
        });
  }

  /** What is asked for stays while something is told beside it; another way of working ends it. */
  @Test
  void itIsAskedForUntilSomethingElseIsDone() {
    Toolkit.on(
        () -> {
          page(ScreenId.PART);
          press("Put it back");
          scan(sample.action(Action.YES));
          press("No tag on it", "Back");
          asksForTheTag();
          press("Scan both");
          assertThat(window.words()).doesNotContain(ASKED);
          return 0;
        });
  }

  @Test
  void aPageThatItsTagOpenedHasItInTheHand() {
    Toolkit.on(
        () -> {
          page(ScreenId.PART_IN_HAND);
          press("Put it back");
          assertThat(window.words()).contains("Now scan the place card");
          scan(sample.card("3EX"));
          isProven();
          return 0;
        });
  }

  @Test
  void alsoWhereItsTagIsReadOnTheTappedPage() {
    Toolkit.on(
        () -> {
          page(ScreenId.PART);
          scan(sample.tag(PUSHROD));
          press("Put it back");
          assertThat(window.words()).contains("Now scan the place card");
          return 0;
        });
  }

  /** Held upside down and turned: it has no tag all the same. */
  @Test
  void turnedInBetweenItIsStillWithoutATag() {
    Toolkit.on(
        () -> {
          page(ScreenId.PART);
          press("Put it back", "No tag on it", "It lay as the 3 EX pushrod", "Put it in without");
          scan(sample.card("3EX"));
          press("I held it upside down");
          assertThat(window.words()).contains("STOP");
          scan(sample.action(Action.UNDO));
          assertThat(sample.state(PUSHROD)).isEqualTo(PlaceState.FITTED);
          assertThat(Untagged.places(sample.job.state())).containsExactly(place());
          return 0;
        });
  }

  /** The bench map opens the page by a tap and by a scan, also on the pages of its drawing. */
  @Test
  void theBenchMapTellsATapFromAScan() {
    Toolkit.on(
        () -> {
          page(ScreenId.PART);
          for (boolean scanned : new boolean[] {false, true}) {
            window.shell.context().navigator().show(ScreenId.BENCH_MAP);
            window.layOut();
            press("Pushrods", "cylinder 3");
            assertThat(window.shell.current()).isInstanceOf(CylinderPageScreen.class);
            if (scanned) {
              scan(sample.tag(PUSHROD));
            } else {
              press("cylinder 3, exhaust");
            }
            press("Put it back");
            assertThat(window.words()).contains(scanned ? "Now scan the place card" : ASKED);
          }
          return 0;
        });
  }
}
