package wherefrom.job.before;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import wherefrom.engine.BoreSpot;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Sources;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.LimitTarget;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OpenJob;
import wherefrom.job.inspect.CheckCard;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.measure.Comparing;
import wherefrom.parts.Place;
import wherefrom.quantity.Unit;
import wherefrom.rules.before.Bound;
import wherefrom.rules.before.SignRules;
import wherefrom.rules.before.Symptom;
import wherefrom.rules.before.TestsBefore;
import wherefrom.workings.Inputs;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.compression.CylinderCompression;

/** The tests of an engine that is still together, and what they point to. */
public final class BeforeTeardown {
  /** Lowest over highest, in percent (TM 5-4210-230-14&P-1, Addendum 2). */
  public static final double USUAL_SHARE = 75;

  /** From so much more with oil on, in percent, it counts as a rise. */
  public static final double USUAL_RISE = 10;

  /** More than this, in percent, is cause to suspect a cylinder (FAA AC 43.13-1B, 8-14). */
  public static final double USUAL_LEAK = 25;

  private static final String DRY = "compression-dry";
  private static final String WET = "compression-wet";
  private static final List<String> LEAKS = List.of("leak-down", "leak-percent");
  private static final List<String> RUNNING =
      List.of("oil-cold-idle", "oil-cold-speed", "oil-hot-idle", "oil-hot-speed", "vacuum-idle");
  private static final Subject ENGINE = new Subject.AFeature(Feature.RUNNING, "");

  private final OpenJob job;
  private final Inspecting inspecting;

  public BeforeTeardown(OpenJob job) {
    this.job = job;
    this.inspecting = new Inspecting(job);
  }

  /** The cylinder as it is read: {@code compression@B3}. */
  public static Subject.AFeature cylinder(int number) {
    return new Subject.AFeature(Feature.COMPRESSION, new BoreSpot(number).key());
  }

  /** What the tests point to, the surest first; empty where nothing stands out. */
  public List<Symptom> signs() {
    return SignRules.signs(tests());
  }

  /** The signs that say to look at this. */
  public List<Symptom> hints(Subject subject) {
    return hints(signs(), subject);
  }

  /** Whether a sign says to look at it, for many at once. */
  public Predicate<Subject> named() {
    List<Symptom> signs = signs();
    return subject -> !hints(signs, subject).isEmpty();
  }

  private List<Symptom> hints(List<Symptom> signs, Subject subject) {
    Optional<Place> home =
        subject instanceof Subject.APart part
            ? job.state().findPart(part.item()).map(found -> found.part().home())
            : Optional.empty();
    return signs.stream()
        .filter(sign -> sign.lookAt().stream().anyMatch(where -> where.is(subject, home)))
        .toList();
  }

  /** Everything that was read. */
  public TestsBefore tests() {
    List<Integer> numbers = job.state().layout().cylinders();
    List<String> odd = oddLow();
    return new TestsBefore(
        job.state().layout(),
        numbers.stream().sorted().map(number -> cylinder(number, odd)).toList(),
        running(),
        looks(ENGINE),
        bounds());
  }

  private List<String> oddLow() {
    return new Comparing(job)
        .compare(DRY)
        .map(
            set ->
                set.odd().stream()
                    .filter(one -> one.distance() < 0)
                    .map(one -> one.name())
                    .toList())
        .orElse(List.of());
  }

  private TestsBefore.Cylinder cylinder(int number, List<String> odd) {
    Subject.AFeature at = cylinder(number);
    Optional<ResultValue> dry = value(at, DRY, "value");
    Optional<Result> set = dry.flatMap(read -> inItsSet(at, read));
    return new TestsBefore.Cylinder(
        number,
        dry,
        find(at, DRY).map(MeasuredResult::worst).orElse(Look.NOT_LOOKED),
        set.flatMap(result -> result.findValue("share")),
        set.flatMap(result -> result.findValue("rise")),
        leak(at),
        odd.contains(at.where()),
        looks(at));
  }

  private Optional<Result> inItsSet(Subject at, ResultValue dry) {
    Inputs inputs =
        Inputs.empty().with("dry", measured(dry)).with("highest", measured(highest(dry)));
    Inputs all =
        value(at, WET, "value").map(wet -> inputs.with("wet", measured(wet))).orElse(inputs);
    return new CylinderCompression().compute(all) instanceof Result result
        ? Optional.of(result)
        : Optional.empty();
  }

  private ResultValue highest(ResultValue least) {
    ResultValue most = least;
    for (MeasuredResult result : job.state().measures().listResults(DRY)) {
      Optional<ResultValue> value = result.findValue("value");
      if (value.isPresent() && psi(value.get()) > psi(most)) {
        most = value.get();
      }
    }
    return most;
  }

  private static double psi(ResultValue value) {
    return value.amount().in(Unit.PSI);
  }

  private static wherefrom.quantity.Measured measured(ResultValue value) {
    return wherefrom.quantity.Measured.of(
        value.amount(), wherefrom.quantity.Amount.of(value.standardUncertainty(), value.unit()));
  }

  /** Of both ways of reading it the later one. */
  private Optional<ResultValue> leak(Subject at) {
    return LEAKS.stream()
        .flatMap(plan -> find(at, plan).stream())
        .max((one, other) -> one.time().compareTo(other.time()))
        .flatMap(MeasuredResult::findSize);
  }

  private Optional<MeasuredResult> find(Subject at, String plan) {
    return job.state().measures().findResult(at, plan);
  }

  private Optional<ResultValue> value(Subject at, String plan, String key) {
    return find(at, plan).flatMap(result -> result.findValue(key));
  }

  private Map<String, Look> looks(Subject at) {
    Map<String, Look> looks = new HashMap<>();
    for (CheckCard card : inspecting.cards(at)) {
      looks.put(card.check().key(), card.look());
    }
    return looks;
  }

  private Map<String, TestsBefore.Running> running() {
    Map<String, TestsBefore.Running> read = new HashMap<>();
    for (String plan : RUNNING) {
      find(ENGINE, plan)
          .filter(result -> result.findValue("value").isPresent())
          .ifPresent(
              result ->
                  read.put(plan, new TestsBefore.Running(RunningWords.of(result), limit(result))));
    }
    return read;
  }

  /** A pressure is judged with or without its speed: what it was read at bounds nothing. */
  private Look limit(MeasuredResult result) {
    return result
        .findValue("value")
        .flatMap(
            value ->
                job.state()
                    .measures()
                    .findLimit(result.plan().key(), "value")
                    .map(limit -> limit.judge(value).look()))
        .orElse(Look.NOT_LOOKED);
  }

  private TestsBefore.Bounds bounds() {
    return new TestsBefore.Bounds(share(), rise(), leakBound());
  }

  /** The least share of the highest reading, with its source. */
  public Bound share() {
    return own(LimitTarget.COMPRESSION, LimitTarget.SHARE, true)
        .orElse(new Bound(USUAL_SHARE, Sources.TM_230 + "; another engine's figure"));
  }

  /** The least rise with oil that counts as one, with its source. */
  public Bound rise() {
    return own(LimitTarget.COMPRESSION, LimitTarget.RISE, true)
        .orElse(new Bound(USUAL_RISE, Sources.PRACTICE));
  }

  /** The most that a cylinder may leak, with its source. */
  public Bound leakBound() {
    return own("leak-down", "leak", false)
        .or(() -> own("leak-percent", "value", false))
        .orElse(new Bound(USUAL_LEAK, Sources.AC_43 + "; of aircraft engines"));
  }

  /** The person's own limit. */
  private Optional<Bound> own(String plan, String result, boolean lower) {
    return job.state()
        .measures()
        .findLimit(plan, result)
        .flatMap(
            limit ->
                (lower ? limit.lower() : limit.upper())
                    .map(end -> new Bound(end.in(Unit.PERCENT), limit.source())));
  }
}
