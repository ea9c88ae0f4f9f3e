package wherefrom.job.phone;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.OpenJob;
import wherefrom.job.puttogether.FirstIn;
import wherefrom.job.puttogether.FitMode;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.puttogether.ToFit;
import wherefrom.parts.Orientation;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.text.Words;

/** What is left once a part is in. */
record LeftToFit(OpenJob job, PutTogether together) {

  /** Whether a part there can be in turned. */
  boolean canBeTurned(Place place) {
    return Places.orientation(job.state().layout(), place.kind()) != Orientation.NONE;
  }

  /** What is left, and what a right place says nothing of. */
  String words(Place fitted) {
    List<String> said = new ArrayList<>();
    said.add(left(fitted.kind()));
    new FirstIn(job.state()).notice(fitted).ifPresent(said::add);
    if (together.mode() == FitMode.FOLLOW_THE_LIST) {
      said.add("No card scanned.");
    }
    return String.join(" ", said);
  }

  private String left(PartKind fitted) {
    List<Place> left = new ToFit(job).places();
    if (together.mode() == FitMode.FOLLOW_THE_LIST) {
      return together
          .target()
          .map(next -> "Next: " + next.brief() + " " + next.kind().word() + ".")
          .orElse(left.isEmpty() ? "Nothing is left to fit." : "The rest is held.");
    }
    int alike = (int) left.stream().filter(at -> at.kind() == fitted).count();
    return alike == 0
        ? "All " + fitted.plural() + " are fitted."
        : Words.count(alike, fitted.word(), fitted.plural()) + " to fit.";
  }
}
