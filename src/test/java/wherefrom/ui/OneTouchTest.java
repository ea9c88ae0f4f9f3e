package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javafx.scene.Node;
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

  private final Map<Class<?>, String> firsts = new HashMap<>();
  private int pressed;
  private int wrote;

  @Test
  void everyKeyWritesOneEntryAtMost() {
    List<String> faults = new ArrayList<>();
    String[] wanted = System.getProperty("shots", "").split(",", -1);
    for (Shot shot : Gallery.all()) {
      if (Stream.of(wanted).anyMatch(shot.name()::startsWith)) {
        walk(shot, faults);
      }
    }
    assertThat(faults).isEmpty();
    assertThat(pressed).isGreaterThan(500);
    assertThat(wrote).as("touches that wrote an entry").isGreaterThan(60);
  }

  /**
   * Goes on in the same window while the screen stays or Back leads to it again, and from the start
   * where it does not.
   */
  private void walk(Shot shot, List<String> faults) {
    SampleWindow window = Toolkit.on(() -> open(shot));
    for (int key = 0; key < MOST_KEYS; key++) {
      int at = key;
      SampleWindow before = window;
      window = Toolkit.on(() -> again(shot, before));
      SampleWindow now = window;
      if (!Toolkit.on(() -> pressed(shot, now, at, faults))) {
        Toolkit.on(() -> takenDown(now));
        return;
      }
    }
  }

  private static SampleWindow again(Shot shot, SampleWindow window) {
    // The camera of a test runs on the window's thread: it is not begun a second time.
    if (!isUp(window, shot) && !window.shell.context().settings().cameraOn()) {
      window.shell.context().navigator().back();
      if (isUp(window, shot)) {
        window.layOut();
      }
    }
    if (isUp(window, shot)) {
      return window;
    }
    window.takeDown();
    return open(shot);
  }

  /** Whether there was such a key. */
  private boolean pressed(Shot shot, SampleWindow window, int at, List<String> faults) {
    if (window.shell.context().job().isEmpty() || at >= keys(shot, window).size()) {
      return false;
    }
    press(shot, window, keys(shot, window).get(at), faults);
    return true;
  }

  private static boolean takenDown(SampleWindow window) {
    window.takeDown();
    return true;
  }

  private static boolean isUp(SampleWindow window, Shot shot) {
    return shot.isUp(window);
  }

  /**
   * The keys of the screen, and UNDO, in every state; the others of the rail, which are the same in
   * all states of a screen, in its first.
   */
  private List<Node> keys(Shot shot, SampleWindow window) {
    boolean first = firsts.computeIfAbsent(shot.screen(), none -> shot.name()).equals(shot.name());
    return window.targets().stream()
        .filter(node -> first || !window.isOnRail(node) || window.words(node).equals("UNDO"))
        .toList();
  }

  private void press(Shot shot, SampleWindow window, Node key, List<String> faults) {
    OpenJob job = window.shell.context().getJob();
    int before = job.history().size();
    try {
      window.press(key);
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
