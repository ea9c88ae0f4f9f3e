package wherefrom.job.puttogether;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.inspection.Look;
import wherefrom.inspection.Sources;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.StandingRule;
import wherefrom.job.Untagged;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.inspect.Castings;
import wherefrom.job.inspect.DebrisBook;
import wherefrom.job.torque.TorqueRecord;
import wherefrom.parts.Place;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.debris.ReachedMains;
import wherefrom.text.Words;

/** What is still to be seen to before the engine is started for the first time. */
public final class FirstStart {

  /**
   * A point to see to.
   *
   * @param open whether the job shows that it is not done; the others nobody can see from here
   */
  public record Point(String heading, String words, String source, boolean open) {}

  private final OpenJob job;

  public FirstStart(OpenJob job) {
    this.job = job;
  }

  /** Whether every section that holds a tracked place is closed. */
  public boolean isDue() {
    return new ToFit(job)
        .sections().stream()
            .allMatch(section -> job.state().closedSections().contains(section.key()));
  }

  /** What the job shows as open, then what is always done. */
  public List<Point> points() {
    List<Point> points = new ArrayList<>();
    points.addAll(unfinished());
    points.addAll(fittedBut());
    points.addAll(checks());
    points.addAll(castings());
    if (new DebrisBook(job).map().mains() == ReachedMains.OPEN) {
      points.add(
          new Point(
              "Did it reach the mains?",
              "Debris was found. The bearings that tell are not inspected.",
              Sources.TM_346,
              true));
    }
    for (String open : TorqueRecord.open(job.state())) {
      points.add(new Point("Torque card open", open + ".", Sources.PRACTICE, true));
    }
    points.addAll(forAReason());
    points.addAll(new StartList(job).points());
    return points;
  }

  private List<Point> fittedBut() {
    return new ToFit(job)
        .fittedBut().stream()
            .map(
                one ->
                    new Point("Fitted, but", one.place().words() + ": " + one.sentence(), "", true))
            .toList();
  }

  /** Places that are empty, and stops that nobody solved. */
  private List<Point> unfinished() {
    List<Point> points = new ArrayList<>();
    int places = new ToFit(job).places().size();
    if (places > 0) {
      points.add(
          new Point("Still to fit", Words.count(places, "part") + ".", Sources.PRACTICE, true));
    }
    int stops = job.state().stops().waiting().size();
    if (stops > 0) {
      points.add(
          new Point(
              "Stops wait", Words.count(stops, "stop") + " to solve.", Sources.PRACTICE, true));
    }
    return points;
  }

  /**
   * Block and heads that nobody tested, those that a test speaks against, and those that came off
   * again; not where somebody has decided since.
   */
  private List<Point> castings() {
    return new Castings(job).list().stream().flatMap(one -> casting(one).stream()).toList();
  }

  private static Optional<Point> casting(Castings.Casting one) {
    if (one.isDoubted()) {
      String words = one.words() + ": a test says " + one.worst().word();
      return Optional.of(
          new Point("Casting not decided", Words.sentence(words), Sources.PRACTICE, true));
    }
    if (one.outweighed().isPresent()) {
      String words = one.words() + " came off again: nobody has decided since";
      return Optional.of(
          new Point("Casting not decided", Words.sentence(words), Sources.PRACTICE, true));
    }
    boolean untouched = one.worst() == Look.NOT_LOOKED && one.decision().isEmpty();
    return untouched
        ? Optional.of(
            new Point(
                "Casting not tested",
                Words.sentence(one.words() + ": nobody tested it or decided about it"),
                Sources.PRACTICE,
                true))
        : Optional.empty();
  }

  /** Each open check once, with the places that it is open at. */
  private List<Point> checks() {
    record Alike(String rule, String sentence, Optional<String> seen) {}
    Map<Alike, List<StandingRule>> alike = new LinkedHashMap<>();
    for (StandingRule check : new Planning(job).openChecks()) {
      Optional<String> seen = check.answer().map(CheckAnswered::words);
      Consequence one = check.consequence();
      Alike key = new Alike(one.rule(), one.sentence(), seen);
      alike.computeIfAbsent(key, it -> new ArrayList<>()).add(check);
    }
    return alike.values().stream().map(FirstStart::point).toList();
  }

  private static Point point(List<StandingRule> alike) {
    StandingRule check = alike.get(0);
    String note =
        check.answer().map(CheckAnswered::words).filter(words -> !words.isEmpty()).orElse("");
    String where =
        alike.stream()
            .map(one -> one.consequence().cause().where())
            .filter(words -> !words.isEmpty())
            .distinct()
            .collect(Collectors.joining(", "));
    return new Point(
        check.answer().isPresent() ? "Check failed" : "Open check",
        check.consequence().sentence()
            + (alike.size() > 1 ? " At " + where + "." : "")
            + (note.isEmpty() ? "" : " Seen: " + note + "."),
        check.consequence().ruleWords() + "; " + check.consequence().source(),
        true);
  }

  /** What sits or is missing somewhere because somebody said why. */
  private List<Point> forAReason() {
    EngineJob state = job.state();
    List<Point> points = new ArrayList<>();
    for (PartFitted fit : state.onPurpose()) {
      points.add(
          new Point(
              "Fitted on purpose",
              state.getPart(fit.item()).part().words()
                  + ", at "
                  + fit.place().words()
                  + ": "
                  + fit.onPurpose()
                  + ".",
              Sources.PRACTICE,
              true));
    }
    for (Place place : Untagged.places(state)) {
      points.add(
          new Point(
              "Fitted without a tag",
              place.words() + ": nothing proves which part it is.",
              Sources.PRACTICE,
              true));
    }
    for (Place place : state.places()) {
      state
          .findExcuse(place)
          .map(words -> new Point("Left empty", place.words() + ": " + words + ".", "", true))
          .or(() -> kept(place))
          .ifPresent(points::add);
    }
    return points;
  }

  /** A part that was excused where it sits; a fit on purpose is told by itself. */
  private Optional<Point> kept(Place place) {
    EngineJob state = job.state();
    return state
        .findSeated(place)
        .flatMap(part -> state.findLeftIn(part.item()))
        .map(words -> new Point("Left in", place.words() + ": " + words + ".", "", true));
  }
}
