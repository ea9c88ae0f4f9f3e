package wherefrom.workings.plan;

import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.accept.Acceptance;
import wherefrom.workings.catalogue.basis.Gap;
import wherefrom.workings.catalogue.basis.Minimum;

/**
 * A gap beside the least that is usual for it.
 *
 * @param result the gap with its band
 * @param gap what is between which parts
 * @param atLeast whether the gap is only known to be no smaller than this
 */
public record Margin(ResultValue result, Gap gap, boolean atLeast) {

  /** How the gap stands to its least. */
  public enum Standing {
    /** Over the least by more than the guard band of 1.65·u. */
    CLEAR,
    /** Too near the least for the uncertainty. */
    UNDECIDED,
    /** Only known to be no smaller than a size that is too small to tell. */
    NOT_KNOWN,
    /** Under the least. */
    UNDER,
    /** Nothing is left: the parts meet. */
    TOUCHES
  }

  /** A gap whose size is known. */
  public Margin(ResultValue result, Gap gap) {
    this(result, gap, false);
  }

  /** The usual least and its source. */
  public Minimum least() {
    return gap.least();
  }

  /** The least in the unit of the result. */
  public double leastInUnit() {
    return Amount.of(least().millimetres(), Unit.MILLIMETRE).in(result.unit());
  }

  /** What is left above the least, in the unit of the result. */
  public double left() {
    return result.value() - leastInUnit();
  }

  public Standing standing() {
    double guard = Acceptance.GUARD_FACTOR * result.standardUncertainty();
    if (left() >= 0 && left() >= guard) {
      return Standing.CLEAR;
    }
    if (atLeast) {
      return Standing.NOT_KNOWN;
    }
    if (result.value() <= 0) {
      return Standing.TOUCHES;
    }
    return left() < 0 ? Standing.UNDER : Standing.UNDECIDED;
  }

  /** Whether it is known to be under the least. */
  public boolean isBad() {
    return standing() == Standing.UNDER || standing() == Standing.TOUCHES;
  }

  /** "piston to intake valve: 0.118 in, usual least 0.080 in (from memory, unverified)". */
  public String sentence() {
    String touch = standing() == Standing.TOUCHES ? gap.touchWords() + ". " : "";
    return touch
        + result.words()
        + ": "
        + result.text()
        + ", usual minimum "
        + least().words()
        + " ("
        + least().source().text()
        + ")";
  }
}
