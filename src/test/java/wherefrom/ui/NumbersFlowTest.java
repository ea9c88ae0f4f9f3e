package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.job.numbers.Bearings;
import wherefrom.job.numbers.ClearanceLimits;
import wherefrom.job.numbers.ClearanceLimits.Field;
import wherefrom.job.numbers.NumbersSample;
import wherefrom.job.numbers.PlanBook;
import wherefrom.job.numbers.WorkingBook;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.workings.catalogue.compression.CompressionRatio;

/** Numbers worked through the window by touch. */
class NumbersFlowTest {
  private final SampleJob sample = SampleJob.apart();

  private SampleWindow open() {
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(ScreenId.NUMBERS);
    window.layOut();
    return window;
  }

  private void ratioIsTyped() {
    WorkingBook book = new WorkingBook(new CompressionRatio(), Optional.of(sample.job));
    NumbersSample.figures()
        .forEach(
            (key, text) -> {
              if (book.working().card().findInput(key).isPresent()) {
                book.set(key, text);
              }
            });
  }

  @Test
  void whatIsChosenToBeFoundStandsOnTheKeyAtOnce() {
    ratioIsTyped();
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          window.pressOnSomePage("Compression ratio");
          window.pressBelow("Solve");
          assertThat(window.targets().stream().map(window::words))
              .as("keys of a sentence that has not begun")
              .noneMatch(words -> words.startsWith("What"));
          window.pressOnSomePage("Chamber");
          assertThat(window.words()).contains("What chamber", "gives compression ratio");
          window.press("gives");
          window.pressOnSomePage("Swept");
          assertThat(window.words()).contains("gives swept volume");
          return window;
        });
  }

  @Test
  void whatIsChosenToBeSteppedStandsOnTheKeyAtOnce() {
    new PlanBook(sample.job).add(1);
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          window.press("The plan");
          window.pressBelow("Step wanted ratio");
          window.pressOnSomePage("lobe lift");
          window.press("More");
          assertThat(window.words()).contains("Step lobe lift: not said");
          return window;
        });
  }

  @Test
  void figuresTypedForAWorkingAreTakenIntoThePlanInOneStep() {
    ratioIsTyped();
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          window.press("The plan");
          assertThat(window.words()).contains("begin with Figures");
          window.pressBelow("Figures");
          assertThat(window.words()).contains("Bore: not known");
          window.press("Copy 7");
          assertThat(window.words()).contains("Bore: 3.870 in");
          assertThat(window.targets()).noneMatch(key -> window.words(key).startsWith("Copy"));
          window.press("Back");
          assertThat(window.words()).contains("8.79");
          window.press("UNDO");
          window.press("UNDO");
          assertThat(window.words()).doesNotContain("8.79").contains("begin with Figures");
          return window;
        });
  }

  @Test
  void limitsThatCannotBeAreSaidWhenTheirSourceWouldMakeThemJudge() {
    ClearanceLimits.set(sample.job, Bearings.MAINS, Field.LOWER, "0.0030 in");
    ClearanceLimits.set(sample.job, Bearings.MAINS, Field.UPPER, "0.0010 in");
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          window.press("The plan");
          window.pressBelow("Plots");
          window.pressBelow("Clearance limits");
          window.press("Mains, manual");
          window.press("M");
          assertThat(window.shell.message()).isEmpty();
          window.press("Done");
          assertThat(window.words()).contains("Mains, manual and page: not typed", "lower");
          assertThat(sample.job.state().measures().limits()).isEmpty();
          assertThat(window.shell.message()).isNotEmpty();
          return window;
        });
  }
}
