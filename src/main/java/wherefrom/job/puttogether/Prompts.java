package wherefrom.job.puttogether;

import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.job.Unmated;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.Verdict;

/** What to tell the person to do next while putting together. */
record Prompts(
    PutTogether.Mode mode,
    Optional<Verdict> stop,
    Optional<Part> part,
    Optional<Spot> spot,
    Optional<Place> target) {

  Step next() {
    if (stop.isPresent()) {
      return new Step.Judged(stop.get());
    }
    return switch (mode) {
      case FOLLOW_THE_LIST ->
          target
              .<Step>map(Step.Next::new)
              .orElseGet(() -> new Step.Said("Nothing is left to fit."));
      case SCAN_BOTH -> new Step.Said("Scan a part or its place card.");
      case WHERE_DOES_THIS_GO -> new Step.Said("Scan a part: its place is shown.");
    };
  }

  String help() {
    if (stop.isPresent()) {
      return stop.get().wayOut()
          + " Or scan UNDO if it was the wrong scan. On purpose: NEXT for the reason, then YES.";
    }
    if (part.isPresent()) {
      return "Now scan the place card by the hole, or tap the place.";
    }
    return spot.isPresent() ? "Now scan the part." : "Scan the tag on a part, or a place card.";
  }

  /** What to say to a YES when no reason is chosen. */
  String yes() {
    return stop.isPresent()
        ? "Choose a reason first: scan NEXT until it is named."
        : "There is no question to answer yes to.";
  }

  static String neverOnPurpose(Part part, Spot spot) {
    String kind = part.kind().word();
    return Place.canLive(part.kind(), spot)
        ? "This " + kind + " is never fitted on purpose. Scan the right part."
        : "A " + kind + " cannot be fitted at " + spot.brief() + ".";
  }

  /** A reason is chosen: what holds when the part is fitted for it. */
  static String reason(String chosen, Optional<Unmated> unmated) {
    return "Reason: " + chosen + ". Hold, or scan YES." + told(unmated);
  }

  /** What is said of the stopped part once it is fitted on purpose. */
  String onPurpose(String reason, Optional<Unmated> unmated) {
    Part fitted = part.orElseThrow();
    return "Fitted on purpose: "
        + fitted.words()
        + " into "
        + new Place(fitted.kind(), spot.orElseThrow()).words()
        + ": "
        + reason.strip()
        + "."
        + told(unmated);
  }

  private static String told(Optional<Unmated> unmated) {
    return unmated.map(what -> " " + what.words()).orElse("");
  }
}
