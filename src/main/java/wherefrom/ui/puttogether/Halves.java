package wherefrom.ui.puttogether;

import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.job.EngineJob;
import wherefrom.job.JobPartNames;
import wherefrom.job.puttogether.FitOutcome;
import wherefrom.job.puttogether.PutTogether.Mode;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/**
 * The two halves of a fit: what is known of the part and of the place, and what is still to come.
 *
 * @param part the lines on the part's tag; a sentence where it is still to come
 * @param place the lines on the place's card; a sentence where it is still to come
 * @param hasPart whether the part is known
 * @param hasPlace whether the place is known
 * @param here the place that this is about, if any
 */
record Halves(Lines part, Lines place, boolean hasPart, boolean hasPlace, Optional<Place> here) {

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

  /** What stands while nothing is known yet. */
  private static Halves nothing(Mode mode) {
    boolean shows = mode == Mode.WHERE_DOES_THIS_GO;
    String place = shows ? "Its place is shown" : "and its place card";
    return new Halves(
        Lines.asked("Scan a part"), Lines.asked(place), false, false, Optional.empty());
  }

  /** Of what is due now: the part or the place that waits, the list's next place, or nothing. */
  static Halves of(EngineJob job, Mode mode, FitOutcome due) {
    return due.match(
        judged -> nothing(mode),
        waiting -> part(job, waiting.part().part()),
        waiting -> spot(job, waiting.spot()),
        shown -> nothing(mode),
        next -> listed(job, next.place()),
        fitted -> nothing(mode),
        back -> nothing(mode),
        said -> nothing(mode));
  }

  private static Halves part(EngineJob job, Part part) {
    Place home = part.home();
    Lines tag = new Lines(home.brief(), what(home), part.code(job.engine()).typed());
    return new Halves(tag, Lines.asked("Now scan the place card"), true, false, Optional.of(home));
  }

  private static Halves spot(EngineJob job, Spot spot) {
    Lines card = new Lines(spot.brief(), "", "place card");
    Optional<Place> here =
        job.places().stream().filter(place -> place.spot().equals(spot)).findFirst();
    return new Halves(Lines.asked("Now scan the part"), card, false, true, here);
  }

  private static Halves listed(EngineJob job, Place place) {
    Lines card = new Lines(place.brief(), what(place), "next in the list");
    JobPartNames names = new JobPartNames(job);
    Lines part =
        job.bench()
            .findRightful(place)
            .map(one -> new Lines("Scan " + names.code(one), "", "It is " + names.whereabouts(one)))
            .orElse(Lines.asked("No part is listed"));
    return new Halves(part, card, false, true, Optional.of(place));
  }

  private static String what(Place place) {
    return (place.kind() == PartKind.ROD_SHELL || place.kind() == PartKind.MAIN_SHELL)
        ? "shell"
        : place.kind().word();
  }
}
