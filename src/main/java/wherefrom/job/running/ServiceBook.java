package wherefrom.job.running;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.inspection.Sources;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryFold;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.PutInService;
import wherefrom.job.entry.ServiceDueTyped;
import wherefrom.job.entry.ServiceTicked;
import wherefrom.job.entry.UsageNoted;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;

/** How far the engine has run, and what is due: the fold over the entries that speak of it. */
public final class ServiceBook {
  private static final EntryFold<ServiceBook> READS =
      EntryFold.<ServiceBook>none()
          .at(UsageNoted.class, ServiceBook::use)
          .on(ServiceDueTyped.class, ServiceBook::type)
          .on(ServiceTicked.class, (book, tick) -> book.ticks.put(tick.point(), tick))
          .on(PutInService.class, (book, put) -> book.wasInService = true);

  /** From nine tenths of its figure on a point is due (common practice, no source). */
  private static final BigDecimal SOON = new BigDecimal("0.9");

  /** Seconds. */
  private static final BigDecimal HOUR = BigDecimal.valueOf(3_600);

  private static final String PRINTED_TOO =
      Sources.PRACTICE + "; " + Sources.NAVY_14050 + " has 500 miles or 50 hours";

  /** How a point stands. */
  public enum State {
    OVERDUE("OVERDUE"),
    DUE("due"),
    LATER("later"),
    DONE("done");

    private final String word;

    State(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /**
   * When a point is due.
   *
   * @param after counted from the first start
   */
  public record Due(Amount after, String source) {}

  /**
   * A point as it stands.
   *
   * @param due by hours, by distance, or both: whichever comes first; empty after the run-in
   * @param words what was typed with its tick; may be empty
   */
  public record Line(ServicePoint point, State state, List<Due> due, String words) {
    public Line {
      due = List.copyOf(due);
    }

    /** {@code after 20 h or 500 mi}. */
    public String dueWords() {
      List<String> each = due.stream().map(one -> one.after().text()).toList();
      return each.isEmpty() ? "after the run-in" : "after " + String.join(" or ", each);
    }

    /** Where its figures come from. */
    public String source() {
      return due.isEmpty()
          ? Sources.PRACTICE
          : due.stream().map(Due::source).distinct().collect(Collectors.joining("; "));
    }
  }

  /** What was run in all when it was noted. */
  public record Use(Instant at, Amount run, String words) {}

  private final boolean metric;
  private final boolean ranIn;
  private final Duration runIns;
  private final List<Use> uses = new ArrayList<>();
  private final Map<String, Map<Dimension, Due>> typed = new LinkedHashMap<>();
  private final Map<String, ServiceTicked> ticks = new LinkedHashMap<>();

  private boolean wasInService;

  private ServiceBook(EngineJob job) {
    metric = job.units() == UnitSystem.METRIC;
    job.standing().forEach(logged -> READS.take(this, logged));
    List<RunIn> runs = RunIn.all(job);
    boolean done = runs.stream().anyMatch(run -> run.state() == RunIn.State.DONE);
    ranIn = done || !uses.isEmpty() || wasInService;
    runIns = runs.stream().map(RunIn::ranUntilStop).reduce(Duration.ZERO, Duration::plus);
  }

  public static ServiceBook of(EngineJob job) {
    return new ServiceBook(job);
  }

  private void use(UsageNoted noted, LoggedEntry logged) {
    uses.add(new Use(logged.time(), noted.run(), noted.words()));
  }

  private void type(ServiceDueTyped due) {
    typed
        .computeIfAbsent(due.point(), point -> new EnumMap<>(Dimension.class))
        .put(due.after().dimension(), new Due(due.after(), due.source()));
  }

  /** Whether the engine has run in once, was used since, or was ever put in service. */
  public boolean hasRunIn() {
    return ranIn;
  }

  /** Everything that was noted, oldest first. */
  public List<Use> uses() {
    return List.copyOf(uses);
  }

  /** How long or how far it has run in all, as noted last. */
  public Optional<Amount> findRun(Dimension dimension) {
    return uses.stream()
        .map(Use::run)
        .filter(run -> run.dimension() == dimension)
        .reduce((before, after) -> after);
  }

  /** Every point, in the order of the work. */
  public List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    for (ServicePoint point : ServicePoint.values()) {
      Optional<ServiceTicked> tick =
          Optional.ofNullable(ticks.get(point.key())).filter(ServiceTicked::done);
      List<Due> due = due(point);
      lines.add(
          new Line(
              point,
              tick.isPresent() ? State.DONE : state(due),
              due,
              tick.map(ServiceTicked::words).orElse("")));
    }
    return lines;
  }

  /** The figures of this engine where somebody typed them, else the usual ones. */
  private List<Due> due(ServicePoint point) {
    Map<Dimension, Due> own = typed.getOrDefault(point.key(), Map.of());
    if (!own.isEmpty()) {
      return List.copyOf(own.values());
    }
    return point.isAfterMiles()
        ? List.of(
            new Due(Amount.of("20", Unit.HOUR), PRINTED_TOO),
            new Due(
                metric ? Amount.of("800", Unit.KILOMETRE) : Amount.of("500", Unit.MILE),
                PRINTED_TOO))
        : List.of();
  }

  private State state(List<Due> due) {
    if (!ranIn) {
      return State.LATER;
    }
    if (due.isEmpty()) {
      return isDriven() ? State.OVERDUE : State.DUE;
    }
    return due.stream().map(this::state).min(State::compareTo).orElse(State.LATER);
  }

  /** Whether it went any way, or ran longer than the run-ins, which the hour meter counts too. */
  private boolean isDriven() {
    BigDecimal seconds = BigDecimal.valueOf(runIns.toSeconds());
    return uses.stream()
        .map(Use::run)
        .anyMatch(
            run ->
                run.dimension() == Dimension.RUNNING_TIME
                    ? run.to(Unit.HOUR).number().multiply(HOUR).compareTo(seconds) > 0
                    : run.number().signum() > 0);
  }

  private State state(Due due) {
    BigDecimal run = findRun(due.after().dimension()).map(Amount::inBase).orElse(BigDecimal.ZERO);
    BigDecimal wanted = due.after().inBase();
    if (run.compareTo(wanted) > 0) {
      return State.OVERDUE;
    }
    return run.compareTo(wanted.multiply(SOON)) >= 0 ? State.DUE : State.LATER;
  }

  /** How many points stand so. */
  public int count(State state) {
    return (int) lines().stream().filter(line -> line.state() == state).count();
  }
}
