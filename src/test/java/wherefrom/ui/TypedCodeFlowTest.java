package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.job.PartRecord;
import wherefrom.parts.TagCode;
import wherefrom.parts.Whereabouts;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.PaperShelf;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** A typed code that another job's tag has too: the window shows what it means and asks. */
class TypedCodeFlowTest {
  private final SampleJob sample = SampleJob.whole();
  private final String digits = sample.tag("pushrod@3EX");
  private final String typed = TagCode.find(digits).orElseThrow().typed().replace(" ", "");

  private SampleWindow takingApart() {
    PaperShelf shelf = new PaperShelf().put("launch", sample.job).share("Gray six", typed);
    SampleWindow window = new SampleWindow(96, 100, shelf);
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(ScreenId.TAKE_APART);
    window.layOut();
    window.press("Type code");
    typed.chars().forEach(digit -> window.pressExactly(Character.toString(digit)));
    window.press("Done");
    return window;
  }

  private PartRecord part() {
    return sample.record("pushrod@3EX");
  }

  @Test
  void itIsAskedBeforeAnythingIsLogged() {
    Toolkit.on(
        () -> {
          int before = sample.job.history().size();
          SampleWindow window = takingApart();
          assertThat(window.words())
              .contains("which is it?", "cylinder 3, exhaust, pushrod", "it also fits Gray six");
          assertThat(sample.job.history()).hasSize(before);
          window.press("Another's, or not sure");
          assertThat(window.shell.message()).isEqualTo("Nothing was recorded. Scan the tag.");
          assertThat(sample.job.history()).hasSize(before);
          return part();
        });
    assertThat(part().where()).isEqualTo(Whereabouts.IN_ENGINE);
  }

  /** Half a code is no code of somebody else's: the keypad stays and says what is missing. */
  @Test
  void halfACodeIsAskedForTheRest() {
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(ScreenId.TAKE_APART);
          window.layOut();
          window.press("Type code");
          window.pressExactly("1");
          window.press("Done");
          assertThat(window.shell.message()).isEqualTo("Type all six digits first.");
          assertThat(window.words()).contains("Type a code");
          return 0;
        });
  }

  @Test
  void confirmedItGoesThrough() {
    Toolkit.on(
        () -> {
          takingApart().press("This engine's");
          return part();
        });
    assertThat(part().where()).isEqualTo(Whereabouts.OUT);
  }

  /** "Then scan the tag" is what it says beside No: the scan alone is answer enough. */
  @Test
  void theTagScannedInsteadOfAnAnswerGoesThrough() {
    Toolkit.on(
        () -> {
          takingApart().shell.scan(digits);
          return part();
        });
    assertThat(part().where()).isEqualTo(Whereabouts.OUT);
  }
}
