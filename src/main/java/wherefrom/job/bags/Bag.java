package wherefrom.job.bags;

import wherefrom.job.entry.BagFilled;
import wherefrom.parts.Whereabouts;

/**
 * A bag or a bunch of fasteners on one tag.
 *
 * @param filled what it held when it was filled
 * @param where where it is now
 * @param note what was said as it went there, as why it did all the same; may be empty
 */
public record Bag(BagFilled filled, Whereabouts where, String note) {

  public int number() {
    return filled.number();
  }

  /** {@code bag 3: head bolts, long}. */
  public String words() {
    return "bag " + number() + ": " + filled.what();
  }

  Bag at(Whereabouts now, String note) {
    return new Bag(filled, now, note);
  }

  Bag holding(BagFilled again) {
    return new Bag(again, where, note);
  }
}
