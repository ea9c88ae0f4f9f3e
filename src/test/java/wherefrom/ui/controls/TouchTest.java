package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import javafx.event.EventType;
import javafx.scene.input.MouseEvent;
import org.junit.jupiter.api.Test;
import wherefrom.ui.Toolkit;
import wherefrom.ui.sample.Mouse;

/** How targets take presses. */
class TouchTest {
  private static final long MILLI = 1_000_000L;

  private final AtomicLong now = new AtomicLong(MILLI);
  private final AtomicInteger acts = new AtomicInteger();
  private final Touch touch = new Touch(new Scale(4, 1), now::get);

  private TouchKey key() {
    return Toolkit.on(
        () -> {
          TouchKey key = touch.key("Go on", acts::incrementAndGet);
          key.resize(100, 100);
          return key;
        });
  }

  private static void mouse(TouchKey key, EventType<MouseEvent> type, double x, double y) {
    MouseEvent event = Mouse.event(type, x, y);
    if (type == MouseEvent.MOUSE_PRESSED) {
      key.getOnMousePressed().handle(event);
    } else {
      key.getOnMouseReleased().handle(event);
    }
  }

  private static void press(TouchKey key) {
    mouse(key, MouseEvent.MOUSE_PRESSED, 50, 50);
    mouse(key, MouseEvent.MOUSE_RELEASED, 50, 50);
  }

  @Test
  void actsOnReleaseNotBefore() {
    TouchKey key = key();
    mouse(key, MouseEvent.MOUSE_PRESSED, 50, 50);
    assertThat(acts).hasValue(0);
    mouse(key, MouseEvent.MOUSE_RELEASED, 50, 50);
    assertThat(acts).hasValue(1);
  }

  @Test
  void slidingOffTheKeyCallsThePressOff() {
    TouchKey key = key();
    mouse(key, MouseEvent.MOUSE_PRESSED, 50, 50);
    mouse(key, MouseEvent.MOUSE_RELEASED, 150, 50);
    assertThat(acts).hasValue(0);
  }

  @Test
  void aRepeatWithinAQuarterOfASecondDoesNothing() {
    TouchKey key = key();
    press(key);
    now.addAndGet(249 * MILLI);
    press(key);
    assertThat(acts).hasValue(1);
    now.addAndGet(MILLI);
    press(key);
    assertThat(acts).hasValue(2);
  }

  @Test
  void aNewScreenTakesNoPressForAQuarterOfASecond() {
    TouchKey key = key();
    touch.settle();
    press(key);
    assertThat(acts).hasValue(0);
    now.addAndGet(250 * MILLI);
    press(key);
    assertThat(acts).hasValue(1);
  }

  private TouchKey other(double x) {
    return Toolkit.on(
        () -> {
          TouchKey key = touch.key("Next", acts::incrementAndGet);
          key.resize(100, 100);
          key.relocate(x, 0);
          return key;
        });
  }

  @Test
  void theSecondTapOfAPairNeverReachesWhatHasComeUpUnderTheFinger() {
    press(key());
    now.addAndGet(499 * MILLI);
    press(other(0));
    assertThat(acts).hasValue(1);
    now.addAndGet(MILLI);
    press(other(0));
    assertThat(acts).hasValue(2);
  }

  @Test
  void anotherFingerElsewhereCountsAtOnce() {
    press(key());
    press(other(200));
    assertThat(acts).hasValue(2);
  }

  @Test
  void nothingCountsForAsLongAsADoubleTapTakesAfterADeedThatIsDoneOnce() {
    TouchKey key = key();
    touch.once();
    now.addAndGet(499 * MILLI);
    press(key);
    assertThat(acts).hasValue(0);
    now.addAndGet(MILLI);
    press(key);
    assertThat(acts).hasValue(1);
  }

  @Test
  void aPressThatCountsIsToldBeforeItActs() {
    AtomicInteger told = new AtomicInteger();
    touch.beforeEach(() -> told.set(acts.get() + 1));
    press(key());
    assertThat(told).hasValue(1);
    press(other(0));
    assertThat(told).hasValue(1);
  }
}
