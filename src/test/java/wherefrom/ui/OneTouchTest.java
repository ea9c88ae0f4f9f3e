package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wherefrom.job.OpenJob;
import wherefrom.ui.sample.SampleWindow;

/**
 * Presses every key of every screen of a job, each screen in the states worth looking at: one touch
 * writes one entry at most. {@link SampleWindow#press} holds it, here and in every other test, and
 * names the keys that are meant to write more.
 */
class OneTouchTest {
  private static final int MOST_KEYS = 60;

  private int pressed;
  private int wrote;

  @Test
  void everyKeyWritesOneEntryAtMost() {
    List<String> faults = new ArrayList<>();
    String[] wanted = System.getProperty("shots", "").split(",", -1);
    for (Shot shot : Gallery.all()) {
      if (Stream.of(wanted).anyMatch(shot.name()::startsWith)) {
        Toolkit.on(
            () -> {
              walk(shot, faults);
              return faults;
            });
      }
    }
    assertThat(faults).isEmpty();
    assertThat(pressed).isGreaterThan(500);
    assertThat(wrote).as("touches that wrote an entry").isGreaterThan(60);
  }

  /** Goes on in the same window while the screen stays, and from the start where it has changed. */
  private void walk(Shot shot, List<String> faults) {
    SampleWindow window = open(shot);
    for (int key = 0; key < MOST_KEYS; key++) {
      if (!window.shell.current().getClass().equals(shot.screen())) {
        window = open(shot);
      }
      if (window.shell.desk().job().isEmpty() || key >= window.targets().size()) {
        return;
      }
      press(shot, window, key, faults);
    }
  }

  private void press(Shot shot, SampleWindow window, int key, List<String> faults) {
    OpenJob job = window.shell.desk().getJob();
    int before = job.history().size();
    try {
      window.press(window.targets().get(key));
    } catch (AssertionError e) {
      faults.add(shot.name() + ": " + e.getMessage());
    }
    pressed++;
    wrote += job.history().size() > before ? 1 : 0;
  }

  private static SampleWindow open(Shot shot) {
    SampleWindow window = new SampleWindow(96, 100);
    shot.arrange().accept(window);
    window.layOut();
    return window;
  }
}
