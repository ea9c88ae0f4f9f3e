package wherefrom.workings.plan;

import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.Acceptance;
import wherefrom.workings.catalogue.Minimum;

/**
 * A gap beside the least that is usual for it.
 *
 * @param result the gap with its band
 * @param least the usual least and its source
 */
public record Margin(ResultValue result, Minimum least) {

  /** How the gap stands to its least. */
  public enum Standing {
    /** Over the least by more than the guard band of 1.65·u. */
    CLEAR,
    /** Too near the least for the uncertainty. */
    UNDECIDED,
    /** Under the least. */
    UNDER
  }

  /** The least in the unit of the result. */
  public double leastInUnit() {
    return Amount.of(least.millimetres(), Unit.MILLIMETRE).in(result.unit());
  }

  /** What is left above the least, in the unit of the result. */
  public double left() {
    return result.value() - leastInUnit();
  }

  public Standing standing() {
    if (left() < 0) {
      return Standing.UNDER;
    }
    double guard = Acceptance.GUARD_FACTOR * result.standardUncertainty();
    return left() < guard ? Standing.UNDECIDED : Standing.CLEAR;
  }

  /** "piston to intake valve: 0.118 in, usual least 0.080 in (from memory, unverified)". */
  public String sentence() {
    return result.words()
        + ": "
        + result.text()
        + ", usual least "
        + least.words()
        + " ("
        + least.source().text()
        + ")";
  }
}
