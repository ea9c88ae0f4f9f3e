package wherefrom.ui.puttogether;

import java.util.List;
import java.util.Optional;
import wherefrom.engine.Layout;
import wherefrom.engine.Spot;
import wherefrom.job.EngineJob;
import wherefrom.job.JobPartNames;
import wherefrom.job.OpenJob;
import wherefrom.job.puttogether.FirstIn;
import wherefrom.job.puttogether.FitMode;
import wherefrom.job.puttogether.FitOutcome;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.puttogether.StopWords;
import wherefrom.job.puttogether.ToFit;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.rules.Belonging;
import wherefrom.rules.Verdict;
import wherefrom.text.Words;
import wherefrom.ui.controls.ScreenAnswer;

/**
 * The two halves of a fit: what is known of the part and of the place, and what is still to come.
 *
 * @param part the lines on the part's tag; a sentence where it is still to come
 * @param place the lines on the place's card; a sentence where it is still to come
 * @param hasPart whether the part is known
 * @param hasPlace whether the place is known
 * @param here the place that this is about, if any
 * @param held the part in the hand
 * @param warns whether something stands against it where it belongs
 * @param asksForPart whether the tag of one part is to be scanned: of a known place, or named
 */
record Halves(
    Lines part,
    Lines place,
    boolean hasPart,
    boolean hasPlace,
    Optional<Place> here,
    Optional<Part> held,
    boolean warns,
    boolean asksForPart) {

  /**
   * What stands on a tag.
   *
   * @param large the place, or what to do
   * @param bold the part; may be empty
   * @param small its code, or where it lies; may be empty
   */
  record Lines(String large, String bold, String small) {
    static Lines asked(String words) {
      return new Lines(words, "", "");
    }
  }

  /** What a tap does now: it holds the part in the hand against the place, right or wrong. */
  String question() {
    return held.map(one -> "A tap tries the " + one.home().brief() + " " + what(one.home()))
        .orElse("Which place?");
  }

  /** The part in the hand, where it is recorded as fitted. */
  Optional<Part> recordedAsIn(EngineJob job) {
    return held.filter(part -> job.findFittedAt(part.item()).isPresent());
  }

  /** Whether nothing is known yet, and what this is about is but the next. */
  private boolean isOnlyNext() {
    return here.isPresent() && !hasPart && !hasPlace && !asksForPart;
  }

  /**
   * Where a part was shown to go without being fitted, else what this is about; nothing beside a
   * question that does not speak of it.
   */
  Optional<Place> here(ScreenAnswer answer, FitMode mode) {
    boolean shown = mode == FitMode.WHERE_DOES_THIS_GO && answer.cue().isEmpty();
    return answer
        .kind()
        .filter(it -> shown)
        .flatMap(kind -> answer.lit().stream().findFirst().map(at -> new Place(kind, at)))
        .or(() -> here.filter(at -> !isOnlyNext() || answer.cue().isEmpty()));
  }

  private static Halves of(Lines part, Lines place, boolean hasPlace, Optional<Place> here) {
    return new Halves(part, place, false, hasPlace, here, Optional.empty(), false, hasPlace);
  }

  /** What stands while nothing is known yet. */
  private static Halves nothing(FitMode mode) {
    boolean shows = mode == FitMode.WHERE_DOES_THIS_GO;
    String place = shows ? "Its place is ringed" : "and its place card";
    return of(Lines.asked("Scan a part"), Lines.asked(place), false, Optional.empty());
  }

  /** Of what is due now: the part or the place that waits, the list's next place, or nothing. */
  static Halves of(OpenJob open, PutTogether together, Optional<Place> tapped) {
    FitOutcome due = together.due();
    if (due instanceof FitOutcome.WaitingForPart waiting) {
      return spot(open.state(), waiting.spot(), tapped);
    }
    boolean idle = due instanceof FitOutcome.Said && together.mode() == FitMode.SCAN_BOTH;
    return together
        .target()
        .filter(place -> idle)
        .map(Halves::next)
        .orElseGet(() -> of(open, together.mode(), due, together.isUntagged()));
  }

  /** Nothing is known yet: any part will do, and the next one is named and ringed. */
  private static Halves next(Place place) {
    Lines part = new Lines("Scan a part", "", "next: " + place.brief() + " " + what(place));
    return of(part, Lines.asked("and its place card"), false, Optional.of(place));
  }

  /** A part that was named by a tap: its tag comes first, then its place. */
  static Halves wanted(EngineJob job, Part named, Optional<Spot> known) {
    Place own = Belonging.of(job.bench(), named).place();
    String home = named.home().brief() + " " + what(named.home());
    String code = "its tag, " + named.code(job.engine()).typed();
    Lines tag = new Lines("Scan the " + home, "", code);
    Lines place =
        known
            .map(at -> new Lines(at.brief(), "", "place card"))
            .orElse(new Lines("then its place card", "", own.brief()));
    Optional<Place> here = Optional.of(own);
    return new Halves(tag, place, false, known.isPresent(), here, Optional.empty(), false, true);
  }

  static Halves of(OpenJob open, FitMode mode, FitOutcome due) {
    return of(open, mode, due, false);
  }

  private static Halves of(OpenJob open, FitMode mode, FitOutcome due, boolean untagged) {
    EngineJob job = open.state();
    return due.match(
        judged -> nothing(mode),
        waiting -> part(open, waiting.part().part(), untagged),
        waiting -> spot(job, waiting.spot(), Optional.empty()),
        shown -> nothing(mode),
        next -> listed(job, next.place()),
        fitted -> nothing(mode),
        back -> nothing(mode),
        said -> nothing(mode));
  }

  /** What cannot go in now is said before its place is looked for. */
  private static Halves part(OpenJob job, Part part, boolean untagged) {
    Place home = part.home();
    String code = untagged ? "no tag on it" : part.code(job.state().engine()).typed();
    Lines tag = new Lines(home.brief(), what(home), code);
    Optional<Place> in = job.state().findFittedAt(part.item());
    if (in.isPresent()) {
      Lines there =
          new Lines("Recorded as in: " + in.get().brief(), "", "If you hold it, press the key");
      return new Halves(tag, there, true, false, in, Optional.of(part), true, false);
    }
    Optional<Verdict> against = new Fitting(job).findAgainst(part);
    Lines next =
        against
            .map(
                verdict ->
                    new Lines(
                        Words.capital(why(verdict)), "", StopWords.small(job.state(), verdict)))
            .orElse(
                new Lines(
                    "Now scan the place card",
                    way(job.state().layout(), part.kind()),
                    new FirstIn(job.state()).notice(home).orElse("by its hole; or tap the place")));
    return new Halves(
        tag, next, true, false, Optional.of(home), Optional.of(part), against.isPresent(), false);
  }

  /** The way round, which is seen to before the part goes in. */
  static String way(Layout layout, PartKind kind) {
    return switch (Places.orientation(layout, kind)) {
      case NONE -> "";
      case TOP_END -> "tagged end up";
      case HALF -> "tang in its notch";
      case FACING -> "same way round";
    };
  }

  private static String why(Verdict verdict) {
    return verdict instanceof Verdict.NotCleared held
        ? "not yet: " + held.hold().words()
        : verdict.word();
  }

  /** What was tapped there, else what goes in there next: the innermost that is not in. */
  private static Halves spot(EngineJob job, Spot spot, Optional<Place> tapped) {
    Lines card = new Lines(spot.brief(), "", "place card");
    List<Place> there =
        ToFit.inOrder(job.places().stream().filter(place -> place.spot().equals(spot)).toList());
    Optional<Place> here =
        tapped
            .filter(there::contains)
            .or(() -> there.stream().filter(at -> job.findSeated(at).isEmpty()).findFirst())
            .or(() -> there.stream().findFirst());
    return of(Lines.asked("Now scan the part"), card, true, here);
  }

  private static Halves listed(EngineJob job, Place place) {
    Lines card = new Lines(place.brief(), what(place), "a scan fits it: no card proves it");
    JobPartNames names = new JobPartNames(job);
    Lines part =
        job.bench()
            .findRightful(place)
            .map(one -> new Lines("Scan " + names.code(one), "", "It is " + names.whereabouts(one)))
            .orElse(Lines.asked("No part is listed"));
    return of(part, card, true, Optional.of(place));
  }

  /** The part beside the name of its place, which tells a main shell from a rod shell. */
  static String what(Place place) {
    return (place.kind() == PartKind.ROD_SHELL || place.kind() == PartKind.MAIN_SHELL)
        ? "shell"
        : place.kind().word();
  }
}
