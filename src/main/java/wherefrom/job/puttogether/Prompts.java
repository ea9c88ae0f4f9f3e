package wherefrom.job.puttogether;

import java.util.Optional;
import wherefrom.job.EngineJob;
import wherefrom.job.Unmated;
import wherefrom.job.bags.BagBook;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.Place;
import wherefrom.rules.Verdict;
import wherefrom.text.Words;

/**
 * What to tell the person to do next while putting together.
 *
 * @param held how many parts are left that would be stopped, where the list names none
 * @param never why the stop that stands cannot be overruled; empty where it can, or none stands
 */
record Prompts(
    FitMode mode, InHand hand, Optional<Place> target, int held, Optional<String> never) {
  /** What is said where a stop is to be overruled that speaks of no part at a spot. */
  static final String NO_PART = "There is no part here to fit on purpose.";

  /** How a stop is overruled: by its own key, a reason and a hold, never by YES alone. */
  static final String ON_PURPOSE = "choose the reason at its key, then hold.";

  FitOutcome next() {
    if (hand.stop().isPresent()) {
      return new FitOutcome.Judged(hand.stop().get());
    }
    return switch (mode) {
      case FOLLOW_THE_LIST ->
          target
              .<FitOutcome>map(FitOutcome.Next::new)
              .orElseGet(() -> new FitOutcome.Said(listEnds()));
      case SCAN_BOTH -> new FitOutcome.Said("Scan a part or its place card.");
      case WHERE_DOES_THIS_GO -> new FitOutcome.Said("Scan a part: its place is shown.");
    };
  }

  private String listEnds() {
    return held == 0 ? "Nothing is left to fit." : "What is left would be stopped: see Held.";
  }

  /** What to do whatever was answered last: a half that waits is named. */
  FitOutcome due(EngineJob job) {
    if (!hand.isHalf()) {
      return next();
    }
    return hand.part()
        .<FitOutcome>map(part -> new FitOutcome.WaitingForSpot(job.getPart(part.item()), false))
        .orElseGet(() -> new FitOutcome.WaitingForPart(hand.spot().orElseThrow(), false));
  }

  String help() {
    if (hand.stop().isPresent()) {
      return hand.stop().get().wayOut()
          + " Or scan UNDO if it was the wrong scan."
          + (never.isEmpty() ? " On purpose: " + ON_PURPOSE : "");
    }
    if (hand.part().isPresent()) {
      return "Now scan the place card by the hole, or tap the place.";
    }
    return hand.spot().isPresent()
        ? "Now scan the part."
        : "Scan the tag on a part, or a place card.";
  }

  /** What to say to a NEXT or YES that reaches the stop itself, and no key of it. */
  String yes() {
    if (hand.stop().isEmpty()) {
      return "There is no question to answer yes to.";
    }
    return never.orElse("Nothing is fitted. On purpose: " + ON_PURPOSE);
  }

  /** What to say to a code of a basket, which no part is fitted with. */
  FitOutcome aside(CodeLookup.ABasket basket) {
    return new FitOutcome.Said(
        "Basket " + basket.number() + " is for washing. Scan a part or a place.");
  }

  /** What to say to a bag: whose it is, and where it is used up. */
  FitOutcome aside(CodeLookup.ABag bag, EngineJob job) {
    String whose =
        bag.bag()
            .map(one -> BagBook.of(job).belongsTo(one))
            .filter(words -> !words.isEmpty())
            .map(words -> ", for the " + words)
            .orElse("");
    return new FitOutcome.Said(
        Words.sentence(bag.words() + whose) + " Scan a part or a place here.");
  }

  /** What to say to a big part, whose place nobody mistakes. */
  FitOutcome aside(CodeLookup.ABigPart bigPart) {
    return new FitOutcome.Said(
        Words.sentence(bigPart.words() + " is a big part, without a place card")
            + " Scan a part or a place here.");
  }

  /** What to say where the stop that stands cannot be overruled. */
  String neverOnPurpose() {
    return never.orElse(NO_PART);
  }

  /** A reason is chosen: what holds when the part is fitted for it. */
  static String reason(String chosen, Optional<Unmated> unmated) {
    return "Reason: " + chosen + ". Nothing is fitted yet: hold the key." + told(unmated);
  }

  private String swapped() {
    return hand.stop().orElseThrow() instanceof Verdict.PlaceTaken taken
        ? " Taken out: " + taken.fitted().words() + "."
        : "";
  }

  /** What is said of the stopped part once it is fitted on purpose. */
  String onPurpose(String reason, Optional<Unmated> unmated) {
    return "Fitted on purpose: "
        + hand.part().orElseThrow().words()
        + " into "
        + hand.place().words()
        + ": "
        + reason.strip()
        + "."
        + swapped()
        + told(unmated);
  }

  private static String told(Optional<Unmated> unmated) {
    return unmated.map(what -> " " + what.words()).orElse("");
  }
}
