package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wherefrom.drawing.PartState;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.BearingClearance;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OilClearances;
import wherefrom.job.OpenJob;
import wherefrom.job.measure.Measuring;
import wherefrom.job.measure.Undecided;
import wherefrom.parts.Whereabouts;
import wherefrom.ui.drawn.PartStates;
import wherefrom.ui.subject.Group;

/** What there is to measure, and how far it is. */
final class MeasureModel {
  private final OpenJob job;

  MeasureModel(OpenJob job) {
    this.job = job;
  }

  /** The plans that this engine has something for. */
  List<ReadingPlan> plans() {
    return job.state().remember(Plans.class, state -> new Plans(workOut())).all();
  }

  private record Plans(List<ReadingPlan> all) {}

  private List<ReadingPlan> workOut() {
    return ReadingPlans.all().stream()
        .filter(plan -> ReadingPlans.existsIn(job.state().layout(), plan))
        .filter(plan -> !subjects(plan).isEmpty())
        .filter(plan -> !Group.isBeforeTeardown(plan.of()))
        .toList();
  }

  /** The plan's title, with what it measures where two have one title. */
  String name(ReadingPlan plan) {
    boolean alone =
        ReadingPlans.all().stream().filter(other -> other.title().equals(plan.title())).count()
            == 1;
    String of =
        Group.of(job.state()).stream()
            .filter(group -> group.key().equals(plan.of()))
            .map(Group::words)
            .findFirst()
            .orElse(plan.of());
    return alone
        ? plan.title()
        : of + ": " + plan.title().toLowerCase(Locale.ROOT).replaceFirst("^shell ", "");
  }

  List<ReadingPlan> plans(Subject subject) {
    return new Measuring(job).listPlans(subject);
  }

  List<Subject> subjects(ReadingPlan plan) {
    return Group.of(job.state()).stream()
        .filter(group -> group.key().equals(plan.of()))
        .flatMap(group -> group.subjects().stream())
        .toList();
  }

  private Optional<MeasuredResult> result(ReadingPlan plan, Subject subject) {
    return job.state().measures().findResult(subject, plan.key());
  }

  private long whole(ReadingPlan plan, List<Subject> subjects) {
    return subjects.stream().filter(subject -> isWhole(plan, subject)).count();
  }

  private boolean isWhole(ReadingPlan plan, Subject subject) {
    return result(plan, subject).filter(MeasuredResult::isWhole).isPresent();
  }

  /** Whether nothing more need be read: a station that the engine lacks is waited for by none. */
  private boolean isDone(ReadingPlan plan, Subject subject) {
    return result(plan, subject).filter(one -> one.isWhole() || one.isEach()).isPresent();
  }

  /** How many are measured: {@code 3 of 16}. */
  String count(ReadingPlan plan) {
    List<Subject> subjects = subjects(plan);
    return whole(plan, subjects) + " of " + subjects.size();
  }

  /** What is not measured yet. */
  List<Subject> left(ReadingPlan plan) {
    return subjects(plan).stream().filter(subject -> !isWhole(plan, subject)).toList();
  }

  /** How much of a plan is measured, from 0 to 1. */
  double done(ReadingPlan plan) {
    List<Subject> subjects = subjects(plan);
    return (double) whole(plan, subjects) / Math.max(1, subjects.size());
  }

  /** A reading to take. */
  record Due(ReadingPlan plan, Subject subject) {}

  /** The next one of what was begun, else the first of all. */
  Optional<Due> due() {
    List<ReadingPlan> begun =
        plans().stream()
            .filter(plan -> !job.state().measures().listResults(plan.key()).isEmpty())
            .toList();
    return Stream.concat(begun.stream(), plans().stream())
        .flatMap(
            plan ->
                subjects(plan).stream()
                    .filter(subject -> !isDone(plan, subject))
                    .sorted(Comparator.comparing(subject -> !isAtHand(subject)))
                    .map(subject -> new Due(plan, subject)))
        .findFirst();
  }

  /** How the readings of one subject stand. */
  String state(ReadingPlan plan, Subject subject) {
    Optional<MeasuredResult> result = result(plan, subject);
    if (result.isEmpty()) {
      return "not measured";
    }
    if (!result.get().isWhole()) {
      return result.get().samples().size() + " of " + plan.stations().size() + " read";
    }
    return switch (result.get().worst()) {
      case NOT_LOOKED -> "measured";
      case PASS -> "accept";
      case SUSPECT -> "undecided";
      case FAIL -> "reject";
    };
  }

  /** The same for the drawn engine. */
  PartState standing(ReadingPlan plan, Subject subject) {
    Optional<MeasuredResult> result = result(plan, subject);
    boolean whole = result.filter(MeasuredResult::isWhole).isPresent();
    Look worst = result.map(MeasuredResult::worst).orElse(Look.NOT_LOOKED);
    return PartStates.standing(worst, whole, state(plan, subject));
  }

  /** The next subject of a plan behind this one that is not whole: what is at hand comes first. */
  Optional<Subject> next(ReadingPlan plan, Subject after) {
    List<Subject> subjects = subjects(plan);
    int here = subjects.indexOf(after);
    List<Subject> open =
        IntStream.range(1, subjects.size())
            .mapToObj(step -> subjects.get((here + step) % subjects.size()))
            .filter(other -> !isDone(plan, other))
            .toList();
    return open.stream().filter(this::isAtHand).findFirst().or(() -> open.stream().findFirst());
  }

  /** A part that is still in the engine is not. */
  private boolean isAtHand(Subject subject) {
    return subject.match(
        part -> job.state().getPart(part.item()).where() != Whereabouts.IN_ENGINE,
        at -> true,
        beside -> true);
  }

  /** What its uncertainty leaves open. */
  Undecided undecided() {
    return Undecided.of(job.state());
  }

  /** Those of which something is measured first. */
  List<BearingClearance> clearances() {
    return new OilClearances(job.state())
        .list().stream().sorted(Comparator.comparing(bearing -> bearing.sequence() == 0)).toList();
  }

  /** The plans of which enough is measured to hold a set against itself. */
  List<ReadingPlan> comparable() {
    List<ReadingPlan> plans = new ArrayList<>();
    for (ReadingPlan plan : plans()) {
      long sized =
          job.state().measures().listResults(plan.key()).stream()
              .filter(result -> result.findSize().isPresent())
              .count();
      if (sized > 1) {
        plans.add(plan);
      }
    }
    return plans;
  }
}
