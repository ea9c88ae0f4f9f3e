package wherefrom.phone;

/** Lets so many requests through at once, and so many a second after that. */
final class Bucket {
  private static final double NANOS = 1e9;

  private final int burst;
  private final int perSecond;
  private double left;
  private long last;

  Bucket(int burst, int perSecond, long now) {
    this.burst = burst;
    this.perSecond = perSecond;
    this.left = burst;
    this.last = now;
  }

  /**
   * Takes one, if there is one left.
   *
   * @param now of a steady clock, in nanoseconds
   * @return whether one more may come
   */
  synchronized boolean take(long now) {
    left = Math.min(burst, left + (now - last) / NANOS * perSecond);
    last = now;
    if (left < 1) {
      return false;
    }
    left--;
    return true;
  }
}
