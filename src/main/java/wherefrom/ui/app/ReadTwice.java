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

  /** Whether the same part was read just before; each read begins the time anew. */
  public boolean isAgain(int item) {
    long now = nanos.getAsLong();
    boolean again = last == item && lastAt.filter(at -> now - at < NANOS).isPresent();
    last = item;
    lastAt = Optional.of(now);
    return again;
  }
}
