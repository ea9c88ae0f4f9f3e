package wherefrom.ui.controls;

import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;

/** One target's way from finger down to the deed; repeats within a moment do nothing. */
final class Press {
  private final BooleanSupplier accepted;
  private final LongSupplier nanos;
  private final long repeatNanos;
  private final Runnable act;
  private boolean down;
  private boolean acted;
  private long lastAct;

  Press(BooleanSupplier accepted, LongSupplier nanos, long repeatNanos, Runnable act) {
    this.accepted = accepted;
    this.nanos = nanos;
    this.repeatNanos = repeatNanos;
    this.act = act;
  }

  void down() {
    down = accepted.getAsBoolean();
  }

  /** Whether a finger that is lifted now had been put down here. */
  boolean lift() {
    boolean was = down;
    down = false;
    return was;
  }

  void act() {
    long now = nanos.getAsLong();
    if (acted && now - lastAct < repeatNanos) {
      return;
    }
    acted = true;
    lastAct = now;
    act.run();
  }
}
