package wherefrom.job.print;

import java.util.Set;
import java.util.function.Function;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;

/** What tags or cards are to be printed. */
public sealed interface TagChoice {

  /** What the function for its kind makes of it. */
  default <R> R match(
      Function<OfParts, R> parts,
      Function<PlaceCards, R> placeCards,
      Function<ActionCards, R> actionCards,
      Function<Baskets, R> baskets,
      Function<BagTags, R> bags,
      Function<BigPartTags, R> bigParts,
      Function<ScannerSetUp, R> scannerSetUp) {
    if (this instanceof OfParts one) {
      return parts.apply(one);
    }
    if (this instanceof PlaceCards one) {
      return placeCards.apply(one);
    }
    if (this instanceof ActionCards one) {
      return actionCards.apply(one);
    }
    if (this instanceof Baskets one) {
      return baskets.apply(one);
    }
    if (this instanceof BagTags one) {
      return bags.apply(one);
    }
    if (this instanceof BigPartTags one) {
      return bigParts.apply(one);
    }
    return scannerSetUp.apply((ScannerSetUp) this);
  }

  /** Tags of parts. */
  sealed interface OfParts extends TagChoice {

    /** What the function for its kind makes of it. */
    default <R> R match(
        Function<AllParts, R> all,
        Function<OfKind, R> ofKind,
        Function<NotYetPrinted, R> notYetPrinted,
        Function<OnePart, R> onePart) {
      if (this instanceof AllParts one) {
        return all.apply(one);
      }
      if (this instanceof OfKind one) {
        return ofKind.apply(one);
      }
      if (this instanceof NotYetPrinted one) {
        return notYetPrinted.apply(one);
      }
      return onePart.apply((OnePart) this);
    }

    /**
     * Whether the tag of a part that is not retired is meant.
     *
     * @param printed the parts whose present tag is on a sheet
     */
    boolean isMeant(Part part, Set<Integer> printed);
  }

  /** The tag of every part that is not retired. */
  record AllParts() implements OfParts {
    @Override
    public boolean isMeant(Part part, Set<Integer> printed) {
      return true;
    }
  }

  /** The tags of one kind of part. */
  record OfKind(PartKind kind) implements OfParts {
    @Override
    public boolean isMeant(Part part, Set<Integer> printed) {
      return part.kind() == kind;
    }
  }

  /** The tags that no sheet holds yet: new parts, and tags that are to be printed anew. */
  record NotYetPrinted() implements OfParts {
    @Override
    public boolean isMeant(Part part, Set<Integer> printed) {
      return !printed.contains(part.item());
    }
  }

  /** One part's tag. */
  record OnePart(int item) implements OfParts {
    @Override
    public boolean isMeant(Part part, Set<Integer> printed) {
      return part.item() == item;
    }
  }

  /** A card for each spot of the engine where a tracked part sits. */
  record PlaceCards() implements TagChoice {}

  /** The six cards that hang by the bench. */
  record ActionCards() implements TagChoice {}

  /**
   * Tags for baskets, trays and boxes.
   *
   * @param count how many, from number 1 on
   */
  record Baskets(int count) implements TagChoice {}

  /**
   * Tags for bags of fasteners; what is in a bag is said when it is filled.
   *
   * @param first the number of the first; 0 for the first that is on no tag yet
   * @param count how many
   */
  record BagTags(int first, int count) implements TagChoice {

    /** Tags for more bags. */
    public static BagTags more(int count) {
      return new BagTags(0, count);
    }
  }

  /**
   * Tags of big parts.
   *
   * @param number of the one that is meant; 0 for all
   */
  record BigPartTags(int number) implements TagChoice {

    /** The tag of every big part. */
    public static BigPartTags all() {
      return new BigPartTags(0);
    }
  }

  /** The card that teaches a keyboard-type scanner. */
  record ScannerSetUp() implements TagChoice {}
}
