package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.job.inspect.DebrisBook;
import wherefrom.rules.debris.DebrisLook;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.rules.debris.ReachedMains;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Debris marked in the window, until a look at the bearings has answered what it asks. */
class DebrisFlowTest {
  private final SampleJob sample = SampleJob.apart();

  /** From the bench map, as a person comes to it. */
  private SampleWindow map() {
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(ScreenId.BENCH_MAP);
    window.layOut();
    window.press("Debris");
    return window;
  }

  private ReachedMains mains() {
    return new DebrisBook(sample.job).map().mains();
  }

  @Test
  void aFindSaysWhatToOpenNextCheapestFirst() {
    Toolkit.on(
        () -> {
          SampleWindow window = map();
          assertThat(window.words()).doesNotContain("What to open next");
          window.press("Pan");
          assertThat(window.words()).contains("Oil pan: what is it?");
          window.press("Steel flakes");
          assertThat(window.words())
              .contains("1. Lifters", "2. Front cover", "3. Oil pump", "4. A few bearings");
          window.press("1. Lifters");
          window.press("Pass");
          assertThat(window.words()).contains("1. Front cover").doesNotContain("1. Lifters");
          window.press("UNDO");
          assertThat(window.words()).contains("1. Lifters");
          window.press("UNDO");
          assertThat(window.words()).contains("Nothing found yet");
          assertThat(new DebrisBook(sample.job).finds()).isEmpty();
          return window;
        });
  }

  @Test
  void whatWasSaidOfAFindStandsBehindWhatToOpen() {
    Toolkit.on(
        () -> {
          SampleWindow window = map();
          new DebrisBook(sample.job)
              .found(DebrisPlace.MAGNETIC_PLUG, DebrisLook.GREY_PASTE, "thin");
          window.shell.context().navigator().changed();
          window.press("What to open next");
          assertThat(window.words()).doesNotContain("Noted:");
          window.press("What it points to");
          assertThat(window.words()).contains("Noted: fine gray paste on the magnet", "Thin.");
          return window;
        });
  }

  @Test
  void theQuestionWhetherItReachedTheMainsStaysOpenUntilALookAnswersIt() {
    Toolkit.on(
        () -> {
          SampleWindow window = map();
          window.press("Pan");
          window.press("Steel flakes");
          window.press("Back");
          assertThat(window.words()).contains("Mains: OPEN");
          window.press("Mains:");
          assertThat(window.words()).contains("Still to look at");
          assertThat(mains()).isEqualTo(ReachedMains.OPEN);
          window.press("All bearings");
          window.press("Pass");
          assertThat(mains()).isEqualTo(ReachedMains.NO);
          assertThat(window.words()).doesNotContain("Still to look at");
          return window;
        });
  }

  @Test
  void whatIsOnlyWrittenDownIsNotCountedAsOpened() {
    Toolkit.on(
        () -> {
          SampleWindow window = map();
          new DebrisBook(sample.job).found(DebrisPlace.PAN, DebrisLook.GREY_PASTE, "");
          window.shell.context().navigator().changed();
          assertThat(window.words()).contains("What to open next: 0");
          window.press("What to open next");
          assertThat(window.words()).contains("0 to open", "Nothing needs opening");
          window.press("Write it down");
          window.press("Written down");
          assertThat(window.words()).doesNotContain("Write it down");
          return window;
        });
  }

  @Test
  void whatTheTagOfTheMainsLeadsToAnswersThem() {
    Toolkit.on(
        () -> {
          SampleWindow window = map();
          window.press("Pan");
          window.press("Copper");
          window.press("Back");
          window.press("Mains:");
          window.press("Look at all bearings");
          window.press("Pass");
          assertThat(mains()).isEqualTo(ReachedMains.NO);
          assertThat(window.words()).doesNotContain("Look at");
          return window;
        });
  }
}
