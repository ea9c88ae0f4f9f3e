package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wherefrom.job.OpenJob;
import wherefrom.job.Untagged;
import wherefrom.job.inspect.FoundOnPart;
import wherefrom.job.inspect.FoundOnPart.Standing;
import wherefrom.job.puttogether.FirstIn;
import wherefrom.job.puttogether.FitMode;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.puttogether.ToFit;
import wherefrom.parts.Orientation;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.rules.Verdict;
import wherefrom.text.Words;

/** A part that sits in its right place, and what there is to say beside it. */
final class RightModel {
  private final OpenJob job;
  private final PutTogether together;
  private final Verdict verdict;
  private final Place place;

  RightModel(OpenJob job, PutTogether together, Verdict verdict, Place place) {
    this.job = job;
    this.together = together;
    this.verdict = verdict;
    this.place = place;
  }

  /** Whether nothing is left to fit. */
  boolean isLast() {
    return new ToFit(job).places().isEmpty();
  }

  Place place() {
    return place;
  }

  /** Whether the part was just fitted and could be in turned. */
  boolean canBeTurned() {
    return verdict instanceof Verdict.RightPlace right
        && Places.orientation(job.state().layout(), right.part().kind()) != Orientation.NONE;
  }

  /** The place and its part: beside the name of a main or rod its shell is a shell. */
  List<String> named(List<String> lines) {
    return lines.size() > 1 && lines.get(1).equals(place.kind().word())
        ? List.of(lines.get(0), Halves.what(place))
        : lines;
  }

  /** How the part goes in, in three words; empty where it cannot be turned. */
  String wayRound() {
    return canBeTurned() ? Words.capital(Halves.way(job.state().layout(), place.kind())) : "";
  }

  /** The part that was fitted before, where that is what is said. */
  Optional<Part> alreadyIn() {
    return verdict instanceof Verdict.AlreadyFitted fitted
        ? Optional.of(fitted.part())
        : Optional.empty();
  }

  /** What a person says who had the part in turned. */
  String turnedWords() {
    return "I held it " + turned().toLowerCase(Locale.ROOT);
  }

  /** The same in two or three words. */
  String turned() {
    boolean ends = place.kind().orientation() == Orientation.TOP_END;
    return ends ? "Upside down" : "Back to front";
  }

  /** What is left: the list's next place, else the cap that closes over it, else how many. */
  String leftWords() {
    List<Place> left = new ToFit(job).places();
    if (together.mode() == FitMode.FOLLOW_THE_LIST) {
      return together
          .target()
          .map(next -> "Next: " + next.brief() + " " + Halves.what(next))
          .orElse(left.isEmpty() ? "Nothing is left to fit." : "The rest is held: see Missing.");
    }
    Optional<Place> cap = new FirstIn(job.state()).findCapDue(place);
    if (cap.isPresent()) {
      return "Its cap is open: " + cap.get().words();
    }
    PartKind fitted = place.kind();
    long alike = left.stream().filter(at -> at.kind() == fitted).count();
    return alike == 0
        ? "All " + fitted.plural() + " are fitted."
        : alike + " " + (alike == 1 ? fitted.word() : fitted.plural()) + " to fit";
  }

  /**
   * What the right place says nothing of: that it had no tag, that a stop waits, what is still to
   * go in under the part, that nobody looked at it, and that no card proved the place; empty where
   * nothing is so. It stops nothing.
   */
  String notice() {
    List<String> said = new ArrayList<>();
    job.state()
        .findFitted(place)
        .filter(part -> Untagged.is(job.state(), part.item()))
        .ifPresent(part -> said.add(Untagged.SENTENCE));
    if (together.waiting() > 0) {
      said.add("A stop waits: Go on shows it.");
    }
    new FirstIn(job.state()).notice(place).ifPresent(said::add);
    if (isNotLookedAt()) {
      said.add("Nobody looked at this " + place.kind().word() + ".");
    }
    if (together.mode() == FitMode.FOLLOW_THE_LIST) {
      said.add("No card scanned.");
    }
    return String.join(" ", said);
  }

  private boolean isNotLookedAt() {
    return job.state()
        .findFitted(place)
        .map(part -> FoundOnPart.of(job, part.item()).standing())
        .filter(Standing.NOT_LOOKED::equals)
        .isPresent();
  }
}
