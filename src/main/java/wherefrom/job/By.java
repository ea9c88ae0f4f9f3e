package wherefrom.job;

/**
 * By whom an entry was written.
 *
 * @param bench the bench, counted from 1; logbooks that name none were written at bench 1
 * @param who the person's name as it was given; empty where none was
 */
public record By(int bench, String who) {
  /** Bench 1, nobody named: what every entry of a logbook with a single bench says. */
  public static final By FIRST = new By(1, "");

  /** The most letters of a name. */
  public static final int MOST_LETTERS = 40;

  /** No shop has more benches. */
  public static final int MOST_BENCHES = 999;

  public By {
    who = who.strip();
    if (bench < 1 || bench > MOST_BENCHES) {
      throw new IllegalArgumentException("Benches are numbered from 1 to " + MOST_BENCHES + ".");
    }
    if (who.length() > MOST_LETTERS) {
      throw new IllegalArgumentException("Give the name in " + MOST_LETTERS + " letters.");
    }
  }

  /** The same person at another bench. */
  public By at(int other) {
    return new By(other, who);
  }
}
