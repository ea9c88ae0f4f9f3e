package wherefrom.rules;

import wherefrom.inspection.Look;

/**
 * The worst that looks and readings say of a part.
 *
 * @param look not looked, where nothing was found
 * @param since the entry that said so; 0 where nothing was found
 */
public record Evidence(Look look, long since) {
  public static final Evidence NONE = new Evidence(Look.NOT_LOOKED, 0);

  /** The worse of two; of equals the later. */
  public Evidence or(Evidence other) {
    int worse = look.compareTo(other.look);
    return worse > 0 || (worse == 0 && since >= other.since) ? this : other;
  }

  /** Whether somebody must decide what it means. */
  public boolean isDoubtful() {
    return look == Look.FAIL || look == Look.SUSPECT;
  }
}
