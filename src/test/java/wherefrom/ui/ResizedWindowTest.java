package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.job.settings.Appearance;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.audit.Audit;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** A window that is made smaller loses nothing of what was done in it, however large the text. */
class ResizedWindowTest {
  private static final int WIDE = 940;
  private static final int HIGH = 600;

  private static SampleWindow open() {
    return open(200);
  }

  private static SampleWindow open(int percent) {
    return Toolkit.on(() -> new SampleWindow(Glass.LAPTOP, percent, Appearance.LIGHT));
  }

  private static void makeSmaller(SampleWindow window) {
    Toolkit.on(
        () -> {
          window.shell.resize(WIDE, HIGH);
          window.layOut();
          return null;
        });
    // What was put off to a later moment has been done when the next work is.
    Toolkit.on(
        () -> {
          window.layOut();
          return null;
        });
  }

  private static String words(SampleWindow window) {
    return Toolkit.on(() -> window.words());
  }

  private static List<?> faults(SampleWindow window) {
    return Toolkit.on(
        () -> {
          window.shell.resize(WIDE, HIGH);
          window.layOut();
          return Audit.of(window.scene, window.shell.context().scale());
        });
  }

  /** The words of the first are whole, and find no room any more; those of the second are brief. */
  @ParameterizedTest
  @ValueSource(ints = {150, 200})
  void theHalfThatWasScannedStays(int percent) {
    SampleWindow window = open(percent);
    SampleJob sample = SampleJob.apart();
    Screen before =
        Toolkit.on(
            () -> {
              window.shell.context().open(sample.job);
              window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
              window.scan(sample.tag("pushrod@3EX"));
              window.layOut();
              return window.shell.current();
            });
    assertThat(words(window)).contains("Now scan the");

    makeSmaller(window);

    assertThat(window.shell.current()).isSameAs(before);
    assertThat(words(window)).contains("Now scan the");
    assertThat(window.shell.context().scale().textFactor()).isLessThan(percent / 100.0);
    assertThat(faults(window)).isEmpty();
  }

  @Test
  void whatIsTypedStays() {
    SampleWindow window = open();
    Toolkit.on(
        () -> {
          window
              .shell
              .context()
              .navigator()
              .open(
                  () ->
                      new TextEntryScreen(
                          window.shell.context(), "Name of the job", "", words -> {}));
          window.layOut();
          window.pressExactly("A");
          window.pressExactly("b");
          return null;
        });

    makeSmaller(window);

    assertThat(words(window)).contains("Ab");
  }

  /** The list of jobs has its whole words from the first picture, and loses them with the room. */
  @Test
  void theFirstScreenFollowsTheGlass() {
    SampleWindow window = open(150);
    assertThat(Toolkit.on(() -> window.shell.context().touch().isLarge())).isFalse();

    makeSmaller(window);

    assertThat(Toolkit.on(() -> window.shell.context().touch().isLarge())).isTrue();
    assertThat(faults(window)).isEmpty();
  }
}
