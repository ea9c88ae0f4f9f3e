package wherefrom.rules;

/**
 * Something that stands against a part in a place.
 *
 * @param verdict what is said of it
 * @param since the entry that it follows from; 0 where it has been so from the beginning. A reason
 *     that was given later settles it
 */
public record Objection(StandsAgainst verdict, long since) {

  /** Whether a reason can settle it. */
  public boolean canBeSettled() {
    return verdict.canBeSettled();
  }

  boolean isSettledBy(long reason) {
    return canBeSettled() && reason != 0 && since < reason;
  }
}
