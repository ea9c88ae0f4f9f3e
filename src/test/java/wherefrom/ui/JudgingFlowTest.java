package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.MeasuredResult;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.Typable;
import wherefrom.ui.measure.ToolsScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** A pushrod looked at, measured and judged by scan and touch alone. */
class JudgingFlowTest {
  private final SampleJob sample = SampleJob.apart();
  private final int rod = sample.part("pushrod@3EX").item();

  private SampleWindow open(ScreenId screen) {
    SampleWindow window = Toolkit.on(() -> new SampleWindow(96, 100));
    return Toolkit.on(
        () -> {
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(screen);
          window.layOut();
          window.scan(sample.tag("pushrod@3EX"));
          window.layOut();
          return window;
        });
  }

  private static void press(SampleWindow window, String... words) {
    for (String each : words) {
      window.press(each);
    }
  }

  private static String words(SampleWindow window) {
    return Toolkit.on(() -> window.words());
  }

  /** Types as a digital gauge does: figure, unit, Enter. */
  private static void gauge(SampleWindow window, String typed) {
    Typable screen = (Typable) window.shell.current();
    typed.chars().forEach(each -> screen.type(Character.toString(each)));
    screen.enter();
    window.layOut();
  }

  @Test
  void oneScanOpensTheCardAndADoubtIsSettledByAReading() {
    SampleWindow window = open(ScreenId.INSPECT);
    Toolkit.on(
        () -> {
          assertThat(window.words()).contains("Is it straight?");
          press(window, "Suspect", "Measure", "List a tool", "D", "i", "Done");
          gauge(window, "0.0001in");
          press(window, "One step");
          gauge(window, "0.0010in");
          press(window, "Type a limit", "Upper limit");
          gauge(window, "0.002in");
          press(window, "This engine", "7", "Done");
          return 0;
        });
    MeasuredResult result = sample.job.state().measures().listResults(Subject.ofPart(rod)).get(0);
    assertThat(result.worst()).isEqualTo(Look.PASS);
    assertThat(result.judgements().get(0).limit().source()).isEqualTo("Manual, page 7");
    assertThat(words(window)).contains("ACCEPT").contains("zero was not checked");
  }

  @Test
  void aFailedAnswerSaysWhatFollowsAndUndoTakesItBack() {
    SampleWindow window = open(ScreenId.INSPECT);
    Toolkit.on(
        () -> {
          press(window, "Fail");
          return 0;
        });
    assertThat(words(window)).contains("Must be new: pushrods").contains("Go on");
    assertThat(sample.job.state().bench().worst(rod).look()).isEqualTo(Look.FAIL);
    Toolkit.on(
        () -> {
          press(window, "UNDO");
          return 0;
        });
    assertThat(sample.job.state().bench().worst(rod).look()).isEqualTo(Look.NOT_LOOKED);
  }

  @Test
  void aFailureBecomesAPassOnlyWhereThatIsAskedAndUndoTakesTheWordsAway() {
    SampleWindow window = open(ScreenId.INSPECT);
    Toolkit.on(
        () -> {
          press(window, "Fail", "Go on");
          window.pressBelow("Previous test");
          press(window, "Pass");
          assertThat(window.words()).contains("Test 1 is FAIL. Change it to PASS?");
          press(window, "NO");
          assertThat(sample.job.state().bench().worst(rod).look()).isEqualTo(Look.FAIL);
          press(window, "Pass", "YES");
          assertThat(sample.job.state().bench().worst(rod).look()).isEqualTo(Look.PASS);
          assertThat(window.words()).contains("Kept: pass");
          press(window, "UNDO");
          assertThat(sample.job.state().bench().worst(rod).look()).isEqualTo(Look.FAIL);
          assertThat(window.words()).doesNotContain("Kept:");
          assertThat(window.words())
              .contains("Is it straight? pass")
              .doesNotContain("pushrod-roll");
          return 0;
        });
  }

  @Test
  void scanningTheNextPartGoesOnWithTheSameReadings() {
    SampleWindow window = open(ScreenId.MEASURE);
    Toolkit.on(
        () -> {
          press(window, "Pushrod length");
          window.scan(sample.tag("pushrod@5EX"));
          window.layOut();
          return 0;
        });
    assertThat(words(window)).contains("5 EX pushrod: pushrod length");
    Toolkit.on(
        () -> {
          window.scan(sample.tag("lifter@5EX"));
          window.layOut();
          return 0;
        });
    assertThat(words(window)).contains("Measure 5 EX lifter");
  }

  @Test
  void aGaugeThatNamesItsUnitIsTakenInIt() {
    SampleWindow window = open(ScreenId.MEASURE);
    Toolkit.on(
        () -> {
          press(window, "Pushrod length", "List a tool", "C", "Done");
          gauge(window, "0.01mm");
          press(window, "Two steps");
          gauge(window, "197.97mm");
          return 0;
        });
    MeasuredResult result = sample.job.state().measures().listResults(Subject.ofPart(rod)).get(0);
    assertThat(result.samples().get(0).readings().get(0).text()).isEqualTo("197.97 mm");
    assertThat(result.tool().error().text()).isEqualTo("0.02 mm");
  }

  /** TM 5-3820-256-24-5, p. 18 prints "0.01 mm (0.004 in)". */
  @Test
  void aPrintedPairIsCheckedAmongTheTools() {
    SampleWindow window = open(ScreenId.MEASURE);
    Toolkit.on(
        () -> {
          window.shell.context().navigator().open(() -> new ToolsScreen(window.shell.context()));
          window.layOut();
          window.pressBelow("Check a printed pair");
          gauge(window, "0.004");
          gauge(window, "0.01");
          assertThat(window.words()).contains("0.102 mm, not 0.01 mm: which is meant?");
          window.pressBelow("Check a printed pair");
          gauge(window, "0.004");
          gauge(window, "0.1");
          return 0;
        });
    assertThat(words(window)).contains("0.004 in and 0.1 mm are one size");
  }
}
