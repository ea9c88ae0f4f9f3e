package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicInteger;
import javafx.event.EventType;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;
import wherefrom.ui.Toolkit;
import wherefrom.ui.sample.HandTicker;
import wherefrom.ui.sample.Mouse;

/** A key that must be held for one and a half seconds. */
class HoldKeyTest {
  private final HandTicker time = new HandTicker();
  private final AtomicInteger acts = new AtomicInteger();
  private final Region key =
      Toolkit.on(
          () -> {
            Touch touch = new Touch(new Scale(4, 1), () -> 0, time);
            Region made = touch.hold("Hold: matched pair", acts::incrementAndGet);
            made.resize(400, 100);
            return made;
          });

  private void press() {
    mouse(MouseEvent.MOUSE_PRESSED);
  }

  private void mouse(EventType<MouseEvent> type) {
    MouseEvent event = Mouse.event(type, 50, 50);
    Toolkit.on(
        () -> {
          if (type == MouseEvent.MOUSE_PRESSED) {
            key.getOnMousePressed().handle(event);
          } else if (type == MouseEvent.MOUSE_EXITED) {
            key.getOnMouseExited().handle(event);
          } else {
            key.getOnMouseReleased().handle(event);
          }
          return key;
        });
  }

  /** How far the bar along the lower edge has come, of the whole key. */
  private double bar() {
    return ((Region) key.getChildrenUnmodifiable().get(1)).getWidth() / key.getWidth();
  }

  @Test
  void releasedAfterOnePointFourSecondsItDoesNothing() {
    press();
    time.pass(1400);
    mouse(MouseEvent.MOUSE_RELEASED);
    time.pass(5000);
    assertThat(acts).hasValue(0);
    assertThat(time.isStill()).isTrue();
  }

  @Test
  void itActsAtOnePointFiveSecondsAndNotBefore() {
    press();
    time.pass(1499);
    assertThat(acts).hasValue(0);
    time.pass(1);
    assertThat(acts).hasValue(1);
  }

  @Test
  void heldOnItActsOnce() {
    press();
    time.pass(10_000);
    assertThat(acts).hasValue(1);
    mouse(MouseEvent.MOUSE_RELEASED);
    assertThat(acts).hasValue(1);
  }

  @Test
  void slidingOffTheKeyCallsTheHoldOff() {
    press();
    time.pass(1400);
    mouse(MouseEvent.MOUSE_EXITED);
    time.pass(5000);
    assertThat(acts).hasValue(0);
  }

  @Test
  void twoShortPressesAreNoHold() {
    press();
    time.pass(1000);
    mouse(MouseEvent.MOUSE_RELEASED);
    press();
    time.pass(1000);
    assertThat(acts).hasValue(0);
    time.pass(500);
    assertThat(acts).hasValue(1);
  }

  @Test
  void theBarShowsHowFarTheHoldHasComeAndGoesBack() {
    press();
    time.pass(750);
    assertThat(bar()).isEqualTo(0.5);
    mouse(MouseEvent.MOUSE_RELEASED);
    assertThat(bar()).isZero();
  }
}
