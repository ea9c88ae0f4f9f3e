package wherefrom.job;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Derivation;
import wherefrom.inspection.measure.Judgement;
import wherefrom.inspection.measure.Limit;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.inspection.measure.ResultKeys;
import wherefrom.inspection.measure.Results;
import wherefrom.inspection.measure.Sample;
import wherefrom.inspection.measure.Station;
import wherefrom.inspection.measure.Tool;
import wherefrom.job.entry.LimitTyped;
import wherefrom.job.entry.ReadingsTaken;
import wherefrom.job.entry.SizeTyped;
import wherefrom.job.entry.TakenReading;
import wherefrom.job.entry.ToolListed;
import wherefrom.job.entry.ZeroChecked;
import wherefrom.quantity.Amount;
import wherefrom.rules.size.CutSurface;
import wherefrom.workings.ResultValue;

/** Tools, limits and readings of a job: the fold over the entries that speak of measuring. */
public final class MeasureBook {
  private static final EntryFold<MeasureBook> READS =
      EntryFold.<MeasureBook>none()
          .on(ToolListed.class, MeasureBook::take)
          .on(ZeroChecked.class, MeasureBook::take)
          .at(LimitTyped.class, MeasureBook::take)
          .on(SizeTyped.class, MeasureBook::take)
          .at(ReadingsTaken.class, MeasureBook::take);

  /** Readings with the zero check that held when they were taken. */
  private record Taken(LoggedEntry logged, ReadingsTaken readings, Optional<String> zero) {}

  private final Map<String, Tool> tools = new LinkedHashMap<>();
  private final Map<String, String> zeros = new LinkedHashMap<>();
  private final Map<String, Limit> limits = new LinkedHashMap<>();
  private final Map<String, Long> limited = new LinkedHashMap<>();
  private final Map<String, SizeTyped> sizes = new LinkedHashMap<>();
  private final Map<String, Taken> taken = new LinkedHashMap<>();

  /** Nothing that a result follows from changes once the book is made. */
  private final Map<Taken, Optional<MeasuredResult>> results =
      Collections.synchronizedMap(new IdentityHashMap<>());

  private final SurfaceCuts cuts;

  private MeasureBook(SurfaceCuts cuts) {
    this.cuts = cuts;
  }

  static MeasureBook of(EngineJob job) {
    MeasureBook book = new MeasureBook(SurfaceCuts.of(job));
    job.standing().forEach(logged -> READS.take(book, logged));
    return book;
  }

  private void take(ToolListed tool) {
    tools.put(tool.name(), new Tool(tool.name(), tool.resolution(), tool.error(), tool.repeat()));
  }

  private void take(ZeroChecked zero) {
    zeros.put(zero.tool(), zero.shown().text());
  }

  private void take(SizeTyped size) {
    sizes.put(size.plan(), size);
  }

  private void take(ReadingsTaken readings, LoggedEntry logged) {
    Optional<String> zero = Optional.ofNullable(zeros.get(readings.tool()));
    taken.put(readings.subject() + " " + readings.plan(), new Taken(logged, readings, zero));
  }

  private void take(LimitTyped limit, LoggedEntry logged) {
    limited.put(limit.plan(), logged.sequence());
    String key = limit.plan() + " " + limit.result();
    if (limit.lower().isEmpty() && limit.upper().isEmpty()) {
      limits.remove(key);
    } else {
      limits.put(
          key,
          new Limit(limit.plan(), limit.result(), limit.lower(), limit.upper(), limit.source()));
    }
  }

  public Collection<Tool> tools() {
    return List.copyOf(tools.values());
  }

  public Optional<Tool> findTool(String name) {
    return Optional.ofNullable(tools.get(name));
  }

  /** What a tool showed at zero last. */
  public Optional<String> findZero(String tool) {
    return Optional.ofNullable(zeros.get(tool));
  }

  public Collection<Limit> limits() {
    return List.copyOf(limits.values());
  }

  public Optional<Limit> findLimit(String plan, String result) {
    return Optional.ofNullable(limits.get(plan + " " + result));
  }

  /** The entry that typed a limit of this plan last; 0 where there is none. */
  long limitedAt(String plan) {
    return limited.getOrDefault(plan, 0L);
  }

  /** The size when new. */
  public Optional<Amount> findSize(String plan) {
    return Optional.ofNullable(sizes.get(plan)).map(SizeTyped::size);
  }

  /** Where the size when new is printed. */
  public Optional<String> findSizeSource(String plan) {
    return Optional.ofNullable(sizes.get(plan)).map(SizeTyped::source);
  }

  /** The latest result of a plan on a subject. */
  public Optional<MeasuredResult> findResult(Subject subject, String plan) {
    return Optional.ofNullable(taken.get(subject.key() + " " + plan)).flatMap(this::result);
  }

  /** The entry of the latest readings of a plan on a subject; 0 where there are none. */
  long takenAt(Subject subject, String plan) {
    return Optional.ofNullable(taken.get(subject.key() + " " + plan))
        .map(one -> one.logged().sequence())
        .orElse(0L);
  }

  /** The latest results of a plan, on whatever it was measured. */
  public List<MeasuredResult> listResults(String plan) {
    return taken.values().stream()
        .filter(one -> one.readings().plan().equals(plan))
        .map(this::result)
        .flatMap(Optional::stream)
        .toList();
  }

  /** The latest results on a subject, by every plan. */
  public List<MeasuredResult> listResults(Subject subject) {
    return taken.values().stream()
        .filter(one -> one.readings().subject().equals(subject.key()))
        .map(this::result)
        .flatMap(Optional::stream)
        .toList();
  }

  /** Every latest result. */
  public List<MeasuredResult> all() {
    return taken.values().stream().map(this::result).flatMap(Optional::stream).toList();
  }

  private Optional<MeasuredResult> result(Taken one) {
    return results.computeIfAbsent(one, this::workOut);
  }

  private Optional<MeasuredResult> workOut(Taken one) {
    Optional<ReadingPlan> plan = ReadingPlans.find(one.readings().plan());
    Optional<Subject> subject = Subject.find(one.readings().subject());
    Optional<Tool> tool = findTool(one.readings().tool());
    if (plan.isEmpty() || subject.isEmpty() || tool.isEmpty()) {
      return Optional.empty();
    }
    List<Sample> samples = samples(plan.get(), one.readings().readings());
    List<ResultValue> values =
        Results.of(
            plan.get(), samples, tool.get(), findSize(plan.get().key()), asCut(one, plan.get()));
    return Optional.of(
        new MeasuredResult(
            Math.max(one.logged().sequence(), limited.getOrDefault(plan.get().key(), 0L)),
            one.logged().time(),
            subject.get(),
            plan.get(),
            samples,
            tool.get(),
            one.zero(),
            values,
            judge(plan.get(), judged(plan.get(), samples, values)),
            one.readings().confirmed(),
            one.readings().note()));
  }

  /** What a journal or a bore had been cut to when it was read. */
  private Optional<Amount> asCut(Taken one, ReadingPlan plan) {
    return Subject.find(one.readings().subject())
        .filter(Subject.AFeature.class::isInstance)
        .map(Subject.AFeature.class::cast)
        .flatMap(
            at ->
                CutSurface.find(at.feature())
                    .filter(surface -> surface.plan().equals(plan.key()))
                    .flatMap(
                        surface ->
                            cuts.findBefore(surface, at.where(), one.logged().sequence())
                                .flatMap(cut -> cut.findDiameter(surface, findSize(plan.key())))));
  }

  /**
   * What can be judged: where stations are missing nothing of them all, but a reading that stands
   * for itself. Not every engine has all stations, such as a third ring.
   */
  private static List<ResultValue> judged(
      ReadingPlan plan, List<Sample> samples, List<ResultValue> values) {
    if (samples.size() == plan.stations().size()) {
      return values;
    }
    return plan.shape() == Derivation.EACH
        ? values.stream().filter(value -> plan.findStation(value.key()).isPresent()).toList()
        : List.of();
  }

  private List<Judgement> judge(ReadingPlan plan, List<ResultValue> values) {
    Stream<Judgement> found =
        values.stream()
            .flatMap(
                value ->
                    findLimit(plan.key(), value.key()).map(limit -> limit.judge(value)).stream());
    Stream<Judgement> lacking =
        ResultKeys.of(plan).stream()
            .flatMap(key -> findLimit(plan.key(), key.key()).stream())
            .flatMap(limit -> Results.judgeLacking(plan, values, limit).stream());
    return Stream.concat(found, lacking).toList();
  }

  /** The readings by station, in the plan's order. */
  public static List<Sample> samples(ReadingPlan plan, List<TakenReading> readings) {
    List<Sample> samples = new ArrayList<>();
    for (Station station : plan.stations()) {
      List<Amount> here =
          readings.stream()
              .filter(reading -> reading.station().equals(station.key()))
              .map(TakenReading::reading)
              .toList();
      if (!here.isEmpty()) {
        samples.add(new Sample(station, here));
      }
    }
    return samples;
  }
}
