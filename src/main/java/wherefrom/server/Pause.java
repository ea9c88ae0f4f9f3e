package wherefrom.server;

/** Waits between two tries. */
final class Pause {
  private Pause() {}

  /**
   * Waits so many milliseconds.
   *
   * @return false where the thread is told to end, which it goes on being told: whoever tries again
   *     and again must then stop, or it never waits any more
   */
  static boolean took(int millis) {
    try {
      Thread.sleep(millis);
      return true;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
