package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Look;
import wherefrom.job.entry.PartOut;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.parts.Whereabouts;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.home.JobHomeScreen;
import wherefrom.ui.part.PartScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.takeapart.TakeApartScreen;

/** From a cold start to the first part out: presses and scans are counted. */
class FirstMinuteFlowTest {
  private static final String FOREIGN =
      "NOT ONE OF OURS This is not one of our tags. Scan the tag with the black frame.";

  private final SampleWindow window = Toolkit.on(() -> new SampleWindow(96, 100));
  private int presses;

  private void press(String... words) {
    Toolkit.on(
        () -> {
          for (String each : words) {
            window.press(each);
            presses++;
          }
          return 0;
        });
  }

  private void scan(String digits) {
    Toolkit.on(
        () -> {
          window.scan(digits);
          window.layOut();
          return 0;
        });
  }

  private SampleJob opened(SampleJob sample) {
    return Toolkit.on(
        () -> {
          window.shell.context().open(sample.job);
          window.layOut();
          return sample;
        });
  }

  private void show(ScreenId id) {
    Toolkit.on(
        () -> {
          window.shell.context().navigator().show(id);
          window.layOut();
          return 0;
        });
  }

  @Test
  void theFirstSheetOfTagsIsFourPressesAway() {
    press("New job", "Begin the job", "Print the tags first", "Print 4 sheets");
    assertThat(presses).isLessThanOrEqualTo(4);
    assertThat(window.services.printed).hasSize(1);
    assertThat(window.words()).contains("Next: place cards");
    press("Next: place cards", "Print", "Next: action cards", "Print", "All printed");
    assertThat(window.shell.current()).isInstanceOf(JobHomeScreen.class);
    assertThat(window.words()).contains("Go on: 1 IN rocker");
  }

  @Test
  void aPartIsTakenOutByOneScanAndAFindingIsTwoPressesAway() {
    SampleJob sample = opened(SampleJob.whole());
    show(ScreenId.TAKE_APART);
    scan(sample.tag("rocker@3EX"));
    scan(sample.tag("pushrod@3EX"));
    assertThat(presses).isZero();
    assertThat(sample.record("pushrod@3EX").where()).isEqualTo(Whereabouts.OUT);
    assertThat(window.words()).contains("OUT 3 EX pushrod", "It is out: 3 IN rocker");
    press("Suspect", "It hops a little");
    assertThat(presses).isEqualTo(2);
    assertThat(sample.record("pushrod@3EX").looks()).containsValue(Look.SUSPECT);
    assertThat(window.shell.message()).startsWith("Suspect: 3 EX pushrod. It hops a little");
    assertThat(window.shell.current()).isInstanceOf(TakeApartScreen.class);
  }

  @Test
  void aNoteSaysWhatItWasPutOnThoughAnotherIsNext() {
    SampleJob sample = opened(SampleJob.whole());
    show(ScreenId.TAKE_APART);
    scan(sample.tag("rocker@3EX"));
    press("Note");
    assertThat(window.words()).contains("Note: 3 EX rocker");
    press("B", "e", "n", "t", "Done");
    assertThat(window.shell.message()).isEqualTo("Noted on 3 EX rocker: Bent.");
    assertThat(window.words()).contains("OUT 3 EX rocker");
  }

  /** The first screen says "or scan any tag": that goes on with the work. */
  @Test
  void aScanOnTheJobsFirstScreenTakesThePartOut() {
    SampleJob sample = SampleJob.whole();
    sample.job.record(new PartOut(sample.part("rocker@1IN").item()));
    opened(sample);
    assertThat(window.words()).contains("or scan any tag");
    scan(sample.tag("rocker@3EX"));
    assertThat(window.shell.current()).isInstanceOf(TakeApartScreen.class);
    assertThat(sample.record("rocker@3EX").where()).isEqualTo(Whereabouts.OUT);
    assertThat(window.words()).contains("OUT 3 EX rocker");
  }

  @Test
  void aScanOnTheFirstScreensOpensThePartsPageInItsJob() {
    SampleJob sample = SampleJob.apart();
    Toolkit.on(
        () -> {
          window.services.shelf.put("launch", sample.job);
          window.shell.context().navigator().home();
          window.layOut();
          return 0;
        });
    scan(sample.tag("pushrod@3EX"));
    assertThat(window.shell.current()).isInstanceOf(PartScreen.class);
    assertThat(window.shell.context().job()).contains(sample.job);
    Toolkit.on(
        () -> {
          window.shell.context().navigator().home();
          window.layOut();
          return 0;
        });
    scan(sample.tag("lifter@5IN"));
    assertThat(window.shell.current()).isInstanceOf(PartScreen.class);
  }

  @Test
  void aTagOfNoJobHereIsSaid() {
    scan(new TagCode(TagType.PART, SampleJob.OTHER_ENGINE, 7, 1).digits());
    assertThat(window.shell.message())
        .isEqualTo("No job here has this tag. Import its job, or begin a new one.");
    scan("001234");
    assertThat(window.shell.message()).contains("No job here has this tag");
  }

  /** The code on a can is answered with the same card whether a job is open or not. */
  @Test
  void whatIsNoTagIsAnsweredAlikeWithAJobAndWithout() {
    scan("4006381333931");
    assertThat(window.shell.message()).isEmpty();
    assertThat(window.words()).contains(FOREIGN);
    press("OK");
    opened(SampleJob.apart());
    show(ScreenId.JOB_HOME);
    scan("4006381333931");
    assertThat(window.words()).contains(FOREIGN);
  }

  /** A tag that came before the list was read is answered then, and nothing is kept any more. */
  @Test
  void noWordOfWaitingStaysOnThePageOfATagThatCameEarly() {
    SampleJob sample = SampleJob.apart();
    List<Runnable> waiting = new ArrayList<>();
    Toolkit.on(
        () -> {
          window.services.shelf.put("launch", sample.job);
          window.workers = waiting::add;
          window.shell.context().navigator().home();
          window.scan(sample.tag("pushrod@3EX"));
          assertThat(window.shell.message()).contains("Still reading");
          while (!waiting.isEmpty()) {
            waiting.remove(0).run();
          }
          return 0;
        });
    assertThat(Toolkit.until(() -> window.shell.current() instanceof PartScreen)).isTrue();
    assertThat(window.shell.message()).isEmpty();
  }

  @Test
  void theEmptyStartSaysWhatItIsForAndWhatToPress() {
    assertThat(window.words())
        .contains("Tag each part as it comes out, and scan it.", "New job", "Open the demo");
  }
}
