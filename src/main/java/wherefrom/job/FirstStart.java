package wherefrom.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Sources;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.torque.TorqueRecord;
import wherefrom.parts.Place;
import wherefrom.rules.debris.ReachedMains;

/** What is still to be seen to before the engine is started for the first time. */
public final class FirstStart {

  /**
   * A point to see to.
   *
   * @param open whether the job shows that it is not done; the others nobody can see from here
   */
  public record Point(String heading, String words, String source, boolean open) {}

  /** Done by hand on every engine (common practice, no source). */
  private static final List<Point> ALWAYS =
      List.of(
          always("Prime the oil", "Turn the pump until oil stands at the rockers."),
          always("Turn it by hand", "Two whole turns, plugs out: nothing may touch or bind."),
          always("Fill and look", "Oil, coolant, fuel lines tight, no tool left on the engine."));

  private final OpenJob job;

  public FirstStart(OpenJob job) {
    this.job = job;
  }

  private static Point always(String heading, String words) {
    return new Point(heading, words, Sources.PRACTICE, false);
  }

  /** Whether every section that holds a tracked place is closed. */
  public boolean isDue() {
    return new StillMissing(job)
        .sections().stream()
            .allMatch(section -> job.state().closedSections().contains(section.key()));
  }

  /** What the job shows as open, then what is always done. */
  public List<Point> points() {
    List<Point> points = new ArrayList<>();
    for (StandingRule check : new Planning(job).openChecks()) {
      String note =
          check.answer().map(CheckAnswered::words).filter(words -> !words.isEmpty()).orElse("");
      points.add(
          new Point(
              check.answer().isPresent() ? "Check not passed" : "Open check",
              check.consequence().sentence() + (note.isEmpty() ? "" : " Seen: " + note + "."),
              check.consequence().rule() + "; " + check.consequence().source(),
              true));
    }
    if (new DebrisBook(job).map().mains() == ReachedMains.OPEN) {
      points.add(
          new Point(
              "Did it reach the mains?",
              "Debris was found and nobody has looked at the bearings that tell.",
              Sources.TM_346,
              true));
    }
    for (String open : TorqueRecord.open(job.state())) {
      points.add(new Point("Torque card open", open + ".", Sources.PRACTICE, true));
    }
    for (PartFitted fit : job.state().onPurpose()) {
      points.add(
          new Point(
              "Fitted on purpose",
              job.state().getPart(fit.item()).part().words()
                  + ", at "
                  + fit.place().words()
                  + ": "
                  + fit.onPurpose()
                  + ".",
              Sources.PRACTICE,
              true));
    }
    for (Place place : job.state().places()) {
      Optional<String> excuse = job.state().findExcuse(place);
      excuse.ifPresent(
          words ->
              points.add(new Point("Left empty", place.words() + ": " + words + ".", "", true)));
    }
    points.addAll(ALWAYS);
    return points;
  }
}
