package wherefrom.ui.app;

import java.util.function.LongSupplier;
import java.util.function.Supplier;

/** The sentence in the title row: what was done last, on the screen on which it came up. */
final class Message {
  /** Nobody has read a sentence so soon: it may well be about the way to the next screen. */
  private static final long UNREAD_NANOS = 1_000_000_000L;

  private final LongSupplier nanos;
  private final Supplier<TitleRow> row;
  private final Runnable told;
  private String last = "";
  private boolean gone;
  private long saidAt;

  /**
   * @param row the title row of the moment
   * @param told is run whenever it says something else
   */
  Message(LongSupplier nanos, Supplier<TitleRow> row, Runnable told) {
    this.nanos = nanos;
    this.row = row;
    this.told = told;
  }

  void say(String sentence) {
    saidAt = nanos.getAsLong();
    last = sentence;
    gone = false;
    put(sentence);
  }

  /** The sentence that is shown; empty when there is none. */
  String shown() {
    return row.get().said();
  }

  /** Another job is on the bench: what was said last is not about it. */
  void forget() {
    last = "";
  }

  /** The sentence that was shown last, whole; empty once something else was done since it went. */
  String last() {
    return last;
  }

  /**
   * Something else is done: a sentence that can have been read goes. Whoever presses for help at
   * that very moment is still told it; what is done after that has nothing to do with it.
   */
  void pass() {
    if (shown().isEmpty() || nanos.getAsLong() - saidAt >= UNREAD_NANOS) {
      last = gone ? "" : last;
      gone = true;
      put("");
    }
  }

  /** It is about nothing any more. */
  void drop() {
    forget();
    put("");
  }

  /** It stands elsewhere now, whole. */
  void move() {
    gone = true;
    put("");
  }

  private void put(String sentence) {
    row.get().say(sentence);
    told.run();
  }
}
