package wherefrom.ui.before;

import java.util.List;
import java.util.Optional;
import wherefrom.drawing.PartState;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OpenJob;
import wherefrom.job.before.BeforeTeardown;
import wherefrom.job.inspect.CheckCard;
import wherefrom.job.inspect.Inspecting;
import wherefrom.rules.before.Symptom;
import wherefrom.ui.drawn.PartStates;
import wherefrom.workings.ResultValue;

/** How far the tests are, and what they point to. */
final class BeforeModel {
  static final Subject RUNNING = new Subject.AFeature(Feature.RUNNING, "");
  static final Subject OUTSIDE = new Subject.AFeature(Feature.OUTSIDE, "");
  static final List<String> OIL =
      List.of("oil-cold-idle", "oil-cold-speed", "oil-hot-idle", "oil-hot-speed");

  private final OpenJob job;

  BeforeModel(OpenJob job) {
    this.job = job;
  }

  List<Subject> cylinders() {
    return job.state().layout().cylinders().stream()
        .sorted()
        .<Subject>map(BeforeTeardown::cylinder)
        .toList();
  }

  List<Symptom> signs() {
    return new BeforeTeardown(job).signs();
  }

  private Optional<MeasuredResult> result(Subject subject, String plan) {
    return job.state().measures().findResult(subject, plan);
  }

  boolean isRead(Subject subject, String plan) {
    return result(subject, plan).filter(MeasuredResult::isWhole).isPresent();
  }

  /** {@code 3 of 8 read}. */
  String count(String plan) {
    long read = cylinders().stream().filter(one -> isRead(one, plan)).count();
    return read + " of " + cylinders().size() + " read";
  }

  double done(String plan) {
    return (double) cylinders().stream().filter(one -> isRead(one, plan)).count()
        / cylinders().size();
  }

  /** The first cylinder that a plan still wants; empty where it has all. */
  Optional<Subject> next(String plan) {
    return cylinders().stream().filter(one -> !isRead(one, plan)).findFirst();
  }

  /** The reading of a cylinder as the drawing shows it, with the sign that speaks of it. */
  PartState standing(Subject subject, String plan) {
    Optional<MeasuredResult> result = result(subject, plan);
    String words =
        result.flatMap(MeasuredResult::findSize).map(ResultValue::text).orElse("not read");
    Look look = result.map(MeasuredResult::worst).orElse(Look.NOT_LOOKED);
    Look worst = look == Look.NOT_LOOKED && isNamed(subject) ? Look.SUSPECT : look;
    return PartStates.standing(
        result.isPresent() ? worst : Look.NOT_LOOKED, result.isPresent(), words);
  }

  private boolean isNamed(Subject subject) {
    return signs().stream()
        .flatMap(sign -> sign.cylinders().stream())
        .anyMatch(number -> BeforeTeardown.cylinder(number).equals(subject));
  }

  private List<CheckCard> cards(Subject subject) {
    return new Inspecting(job).cards(subject);
  }

  boolean isHeard(Subject subject) {
    return cards(subject).stream().noneMatch(card -> card.look() == Look.NOT_LOOKED);
  }

  /** What was heard or seen of a subject, in few words. */
  String heard(Subject subject) {
    List<CheckCard> cards = cards(subject);
    long against = cards.stream().filter(card -> card.look().compareTo(Look.PASS) > 0).count();
    if (against > 0) {
      return against == 1 ? "1 finding" : against + " findings";
    }
    long left = cards.stream().filter(card -> card.look() == Look.NOT_LOOKED).count();
    return left == 0 ? "nothing" : left == cards.size() ? "not noted" : left + " to note";
  }

  /** The same for the drawn engine. */
  PartState heardState(Subject subject) {
    Look worst =
        cards(subject).stream().map(CheckCard::look).max(Look::compareTo).orElse(Look.NOT_LOOKED);
    return PartStates.standing(worst, isHeard(subject), heard(subject));
  }

  String countHeard() {
    long heard = cylinders().stream().filter(this::isHeard).count();
    return heard + " of " + cylinders().size() + " noted";
  }

  double doneHeard() {
    return (double) cylinders().stream().filter(this::isHeard).count() / cylinders().size();
  }

  /** {@code 2 of 4 read}. */
  String countOil() {
    return OIL.stream().filter(plan -> isRead(RUNNING, plan)).count()
        + " of "
        + OIL.size()
        + " read";
  }

  /** The value as read, or that it was not. */
  String value(String plan) {
    return result(RUNNING, plan)
        .flatMap(MeasuredResult::findSize)
        .map(ResultValue::text)
        .orElse("not read");
  }

  static ReadingPlan plan(String key) {
    return ReadingPlans.find(key).orElseThrow();
  }
}
