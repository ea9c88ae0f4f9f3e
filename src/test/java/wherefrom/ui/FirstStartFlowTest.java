package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Section;
import wherefrom.job.change.Planning;
import wherefrom.job.puttogether.FirstStart;
import wherefrom.job.puttogether.StartList;
import wherefrom.job.puttogether.ToFit;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.puttogether.FirstStartScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** From the last section that closes to the first start, in the window. */
class FirstStartFlowTest {
  private final SampleJob sample = SampleJob.whole();

  /** Nothing came out of this engine; one check is open, and all but one section is closed. */
  private SampleWindow open() {
    new Planning(sample.job).make(Change.of(ChangeKind.HOT_TANKED));
    ToFit missing = new ToFit(sample.job);
    List<Section> sections = missing.sections();
    sections.subList(1, sections.size()).forEach(missing::finish);
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
    window.layOut();
    return window;
  }

  @Test
  void theLastSectionThatClosesOpensTheCautionsOfTheFirstStart() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          assertThat(new FirstStart(sample.job).isDue()).isFalse();
          window.press("Finish");
          window.press("Valvetrain, left bank");
          window.press("Finish section");
          assertThat(new FirstStart(sample.job).isDue()).isTrue();
          assertThat(window.words())
              .contains("Before the first start", "fire extinguisher in reach", "fuel leaks");
          StringBuilder all = new StringBuilder(window.words());
          while (!all.toString().contains("Fill and look")) {
            window.press("Down");
            all.append(window.words());
          }
          assertThat(all).contains("Open check", "Prime the oil", "Turn it by hand");
          return window;
        });
  }

  @Test
  void anOpenCheckIsAnsweredFromThereAndIsNamedNoMore() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          window.press("Finish");
          window.press("Valvetrain, left bank");
          window.press("Finish section");
          window.press("Open checks");
          window.press("Check before closing");
          window.press("Pass");
          window.press("Back");
          assertThat(window.words()).contains("Before the first start");
          assertThat(new FirstStart(sample.job).points())
              .filteredOn(FirstStart.Point::open)
              .allMatch(point -> point.heading().equals("Casting not tested"));
          assertThat(window.words()).doesNotContain("Open check ", "R29. ", "To do: check");
          return window;
        });
  }

  @Test
  void aLineOfTheListIsTickedWithWordsAndARockerAtOnce() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          window
              .shell
              .context()
              .navigator()
              .open(() -> new FirstStartScreen(window.shell.context()));
          window.layOut();
          StartList list = new StartList(sample.job);
          turnTo(window, "Second person");
          window.press("Second person");
          window.press("Done");
          assertThat(list.find("second").orElseThrow().ticked()).isTrue();
          window.press("Up");
          turnTo(window, "Oil at rocker");
          int open = list.countOpen();
          window.press("Oil at rocker");
          assertThat(list.countOpen()).isEqualTo(open - 1);
          return window;
        });
  }

  @Test
  void theTagTicksTheNextLineUntilNoneIsLeft() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          window
              .shell
              .context()
              .navigator()
              .open(() -> new FirstStartScreen(window.shell.context()));
          window.layOut();
          StartList list = new StartList(sample.job);
          String first = list.lines().get(0).key();
          window.press("Next: ");
          window.press("Done");
          assertThat(list.find(first).orElseThrow().ticked()).isTrue();
          list.lines().forEach(line -> list.tick(line.key(), "seen", true));
          window.shell.context().navigator().changed();
          assertThat(window.words()).contains("Run-in").doesNotContain("Next: ");
          return window;
        });
  }

  private static void turnTo(SampleWindow window, String words) {
    for (int page = 0; page < 30 && !window.words().contains(words); page++) {
      window.press("Down");
    }
    for (int page = 0; page < 30 && !window.words().contains(words); page++) {
      window.press("Up");
    }
    assertThat(window.words()).contains(words);
  }
}
