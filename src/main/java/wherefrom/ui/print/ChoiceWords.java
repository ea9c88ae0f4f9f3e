package wherefrom.ui.print;

import wherefrom.job.EngineJob;
import wherefrom.job.print.TagChoice;

/** What is to be printed, in words. */
final class ChoiceWords {
  private ChoiceWords() {}

  /** What a sheet holds, in a word or two. */
  static String fileKind(TagChoice choice) {
    return choice.match(
        parts -> "tags",
        cards -> "place cards",
        cards -> "action cards",
        baskets -> "basket tags",
        bags -> "bag tags",
        bigParts -> "tags of big parts",
        card -> "scanner card");
  }

  /** What one of them is called: a card is taped up, a label stuck on. */
  static String piece(TagChoice choice) {
    return choice.match(
        parts -> "label",
        cards -> "card",
        cards -> "card",
        baskets -> "label",
        bags -> "label",
        bigParts -> "label",
        card -> "card");
  }

  static String of(EngineJob job, TagChoice choice) {
    return choice.match(
        parts -> of(job, parts),
        cards -> "place cards",
        cards -> "action cards",
        baskets -> baskets.count() + " basket tags",
        bags -> bags.first() > 0 ? "the tag of bag " + bags.first() : bags.count() + " bag tags",
        bigParts -> bigParts.number() > 0 ? "the tag of a big part" : "the tags of big parts",
        card -> "the scanner set-up card");
  }

  private static String of(EngineJob job, TagChoice.OfParts parts) {
    return parts.match(
        all -> "the tags of all parts",
        kind -> "tags of the " + kind.kind().plural(),
        unprinted -> "new tags",
        one ->
            job.findPart(one.item())
                .map(part -> "the tag of " + part.part().words())
                .orElse("one tag"));
  }
}
