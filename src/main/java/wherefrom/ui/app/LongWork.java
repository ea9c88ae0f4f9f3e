package wherefrom.ui.app;

import java.util.Locale;
import java.util.Optional;
import java.util.function.LongSupplier;
import wherefrom.files.Progress;
import wherefrom.ui.controls.Ticker.Ticking;

/** How far one piece of long work is, between the thread that does it and the window. */
final class LongWork implements Progress.Watcher {
  /** What is done sooner needs no bar. */
  private static final long SHOWN_AFTER_NANOS = 500_000_000L;

  private static final long PAUSE_NANOS = 100_000_000L;

  private final String title;
  private final LongSupplier nanos;
  private final Runnable news;
  private final long begun;
  private volatile int done;
  private volatile int all;
  private volatile boolean stopped;
  private Optional<Ticking> following = Optional.empty();
  private boolean ended;
  private long told;

  /**
   * @param news is run on the thread that works, every now and then
   */
  LongWork(String title, LongSupplier nanos, Runnable news) {
    this.title = title;
    this.nanos = nanos;
    this.news = news;
    this.begun = nanos.getAsLong();
    this.told = begun;
  }

  @Override
  public void at(int pieces, int ofAll) {
    done = pieces;
    all = ofAll;
    long now = nanos.getAsLong();
    if (isLong() && now - told >= PAUSE_NANOS) {
      told = now;
      news.run();
    }
  }

  /** Whether it takes so long that it is to be shown. */
  boolean isLong() {
    return nanos.getAsLong() - begun >= SHOWN_AFTER_NANOS;
  }

  /** It is looked after until it ends. */
  void follow(Ticking ticking) {
    following = Optional.of(ticking);
  }

  void stop() {
    stopped = true;
  }

  @Override
  public boolean isStopped() {
    return stopped;
  }

  /** News that is still on its way to the window comes too late. */
  void end() {
    ended = true;
    following.ifPresent(Ticking::end);
  }

  boolean isEnded() {
    return ended;
  }

  /** From 0 to 1; below 0 where it does not tell. */
  double part() {
    return all == 0 ? -1 : (double) done / all;
  }

  /** {@code Reading pictures: 12 of 300}. */
  String words() {
    if (stopped) {
      return title + ": it stops at the next piece";
    }
    return all == 0 ? title : String.format(Locale.ROOT, "%s: %d of %d", title, done, all);
  }

  String stoppedWords() {
    return title + ": stopped after " + done + " of " + all + ".";
  }
}
