package wherefrom.ui.app;

import java.util.Optional;
import java.util.function.LongSupplier;

/** Tells a tag that one scan read twice from a part that is scanned again. */
public final class ReadTwice {
  /** Nobody puts a part away and takes it up again in less. */
  public static final long NANOS = 1_500_000_000L;

  private final LongSupplier nanos;
  private int last;
  private Optional<Long> lastAt = Optional.empty();

  /**
   * @param nanos a steady clock, in nanoseconds
   */
  public ReadTwice(LongSupplier nanos) {
    this.nanos = nanos;
  }

  /** Whether the same part was taken just before; each such read begins the time again. */
  public boolean isAgain(int item) {
    long now = nanos.getAsLong();
    boolean again = last == item && lastAt.filter(at -> now - at < NANOS).isPresent();
    if (again) {
      lastAt = Optional.of(now);
    }
    return again;
  }

  /** Something was done with a part that was read. */
  public void took(int item) {
    last = item;
    lastAt = Optional.of(nanos.getAsLong());
  }

  /** What was done last was taken back: it can be done again at once. */
  public void forget() {
    lastAt = Optional.empty();
  }
}
