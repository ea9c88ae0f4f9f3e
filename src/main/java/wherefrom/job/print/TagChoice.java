package wherefrom.job.print;

import wherefrom.parts.PartKind;

/** What tags or cards are to be printed. */
public sealed interface TagChoice {

  /** The tag of every part that is not retired. */
  record AllParts() implements TagChoice {}

  /** The tags of one kind of part. */
  record OfKind(PartKind kind) implements TagChoice {}

  /** The tags that no sheet holds yet: new parts, and tags that are to be printed anew. */
  record NotYetPrinted() implements TagChoice {}

  /** One part's tag. */
  record OnePart(int item) implements TagChoice {}

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

  /** The card that teaches a keyboard-type scanner. */
  record ScannerSetUp() implements TagChoice {}
}
