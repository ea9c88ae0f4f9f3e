package wherefrom.rules;

/** A verdict that can be true of a part in a place at any time, as it goes in and as it sits. */
public sealed interface StandsAgainst extends Verdict
    permits Misplaced.WrongPlace,
        Misplaced.WrongMate,
        Misplaced.WrongEnd,
        Verdict.NotCleared,
        Verdict.MustBeNew {

  /** Whether a reason can settle it: what must be new is not used again for any. */
  boolean canBeSettled();
}
