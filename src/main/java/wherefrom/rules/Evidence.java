package wherefrom.rules;

import wherefrom.inspection.Look;

/**
 * The worst that looks and readings say of a part.
 *
 * @param look not looked, where nothing was found
 * @param since the latest entry that said so, or said something else that is doubtful; 0 where
 *     nothing was found
 */
public record Evidence(Look look, long since) {
  public static final Evidence NONE = new Evidence(Look.NOT_LOOKED, 0);

  /**
   * The worse of two. A doubt that came later is news, even where a worse one was known: who gave a
   * reason for the one did not know of the other.
   */
  public Evidence or(Evidence other) {
    int worse = look.compareTo(other.look);
    boolean both = worse == 0 || (isDoubtful() && other.isDoubtful());
    return new Evidence(
        worse > 0 ? look : other.look,
        both ? Math.max(since, other.since) : worse > 0 ? since : other.since);
  }

  /** Whether somebody must decide what it means. */
  public boolean isDoubtful() {
    return look == Look.FAIL || look == Look.SUSPECT;
  }
}
