package wherefrom.job.bags;

import wherefrom.job.entry.BagFilled;
import wherefrom.parts.Whereabouts;

/**
 * A bag or a bunch of fasteners on one tag.
 *
 * @param filled what it held when it was filled
 * @param where where it is now
 */
public record Bag(BagFilled filled, Whereabouts where) {

  public int number() {
    return filled.number();
  }

  /** {@code bag 3: head bolts, long}. */
  public String words() {
    return "bag " + number() + ": " + filled.what();
  }

  Bag at(Whereabouts now) {
    return new Bag(filled, now);
  }

  Bag holding(BagFilled again) {
    return new Bag(again, where);
  }
}
