package wherefrom.ui.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import wherefrom.ui.controls.Ticker;

/** Time that a test lets pass, a millisecond after the other. */
public final class HandTicker implements Ticker {
  /** What is done at a moment that is told as milliseconds since it began. */
  private record Going(long since, Consumer<Long> act) {}

  private final List<Going> going = new ArrayList<>();
  private long now;

  public void pass(long millis) {
    for (long at = 0; at < millis; at++) {
      now++;
      for (Going each : List.copyOf(going)) {
        if (going.contains(each)) {
          each.act().accept(now - each.since());
        }
      }
    }
  }

  @Override
  public Ticking follow(Consumer<Double> passed) {
    return go(millis -> passed.accept((double) millis));
  }

  @Override
  public Ticking repeat(long millis, Runnable act) {
    return go(
        passed -> {
          if (passed % millis == 0) {
            act.run();
          }
        });
  }

  private Ticking go(Consumer<Long> act) {
    Going begun = new Going(now, act);
    going.add(begun);
    return () -> going.remove(begun);
  }

  /** Whether nothing goes on any more. */
  public boolean isStill() {
    return going.isEmpty();
  }
}
