package wherefrom.job.shelf;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.Layout;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryRows;
import wherefrom.job.EntryTable;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.PlaceState;
import wherefrom.job.bags.CarriersAt;
import wherefrom.job.decide.Deciding;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.TagsPrinted;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.print.TagChoice;
import wherefrom.job.print.TagPrinting;
import wherefrom.job.puttogether.FirstStart;
import wherefrom.job.puttogether.ToFit;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.running.ServiceBook;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/**
 * How a job stands: what is so at each place, which day it is, and what each day has open.
 *
 * @param engine the number that its tags bear
 * @param kinds what is tracked
 * @param states what is so at each place
 * @param carriers the heads and rocker shafts, and where they are
 * @param day the day that the work is on
 * @param open by day: tags or place cards to print, parts in the engine, parts without a decision
 *     that they want, places to fit, lines that the record has as not checked
 * @param unlooked parts that are out and that nobody has looked at yet
 * @param inService whether the engine is in service
 * @param due points of service that are due or overdue
 */
public record Standing(
    int engine,
    Layout layout,
    Set<PartKind> kinds,
    Map<Place, PlaceState> states,
    CarriersAt carriers,
    JobDay day,
    Map<JobDay, Integer> open,
    int unlooked,
    boolean inService,
    int due) {
  /** Whether a part that is moved by hand goes in. */
  private static final EntryTable<LoggedEntry, Optional<Boolean>> GOES_IN =
      EntryRows.<LoggedEntry, Optional<Boolean>>none()
          .on(PartOut.class, (logged, out) -> Optional.of(false))
          .on(PartFitted.class, (logged, fitted) -> Optional.of(true))
          .others(Optional.empty());

  public Standing {
    kinds = Set.copyOf(kinds);
    states = Map.copyOf(states);
    open = Map.copyOf(open);
  }

  public static Standing of(OpenJob job) {
    EngineJob state = job.state();
    Map<Place, PlaceState> states = new LinkedHashMap<>();
    state.places().forEach(place -> states.put(place, state.state(place)));
    Map<JobDay, Integer> open = open(job, states);
    return new Standing(
        state.engine(),
        state.layout(),
        state.kinds(),
        states,
        CarriersAt.of(state),
        day(job, open),
        open,
        unlooked(job),
        state.service().since().isPresent(),
        due(state));
  }

  private static int unlooked(OpenJob job) {
    return (int)
        new Inspecting(job)
            .listUnlooked().stream().filter(one -> one.subject() instanceof Subject.APart).count();
  }

  private static int due(EngineJob state) {
    ServiceBook book = ServiceBook.of(state);
    return book.count(ServiceBook.State.DUE) + book.count(ServiceBook.State.OVERDUE);
  }

  private static Map<JobDay, Integer> open(OpenJob job, Map<Place, PlaceState> states) {
    Map<JobDay, Integer> open = new EnumMap<>(JobDay.class);
    open.put(JobDay.TAGS, tagsOpen(new TagPrinting(job)));
    open.put(JobDay.APART, count(states, PlaceState.IN) + count(states, PlaceState.IN_BUT));
    open.put(JobDay.INSPECT, new Deciding(job).listUndecided().size());
    open.put(JobDay.TOGETHER, new ToFit(job).places().size());
    open.put(JobDay.RECORD, BuildRecord.countUnchecked(job));
    return open;
  }

  /** The parts' tags that are on no sheet; then the place cards, which putting together wants. */
  private static int tagsOpen(TagPrinting printing) {
    int tags = printing.faces(new TagChoice.NotYetPrinted()).size();
    boolean cards = tags == 0 && printing.cardsLeft().contains(new TagChoice.PlaceCards());
    return cards ? printing.faces(new TagChoice.PlaceCards()).size() : tags;
  }

  private static int count(Map<Place, PlaceState> states, PlaceState wanted) {
    return (int) states.values().stream().filter(state -> state == wanted).count();
  }

  /**
   * Tags come first while nothing is out. Together begins with the second part in a row that goes
   * in: one that was fitted by the way does not end taking apart.
   */
  private static JobDay day(OpenJob job, Map<JobDay, Integer> open) {
    EngineJob state = job.state();
    if (state.service().since().isPresent()) {
      return JobDay.RECORD;
    }
    boolean fitted = !state.fitted().isEmpty();
    int inEngine = open.getOrDefault(JobDay.APART, 0);
    boolean begun = inEngine < state.places().size();
    if (!begun && !isPrinted(state)) {
      return JobDay.TAGS;
    }
    boolean left = open.getOrDefault(JobDay.TOGETHER, 0) > 0;
    if (inEngine > 0 && (!fitted || (left && !isGoingIn(state)))) {
      return JobDay.APART;
    }
    if (open.getOrDefault(JobDay.TOGETHER, 0) > 0) {
      return open.getOrDefault(JobDay.INSPECT, 0) > 0 && !fitted ? JobDay.INSPECT : JobDay.TOGETHER;
    }
    return new FirstStart(job).isDue() ? JobDay.RECORD : JobDay.TOGETHER;
  }

  /** Whether the last two parts that were moved by hand went in. */
  private static boolean isGoingIn(EngineJob state) {
    List<Boolean> moves =
        state.standing().stream()
            .flatMap(LoggedEntry::each)
            .flatMap(logged -> GOES_IN.of(logged, logged.entry()).stream())
            .toList();
    return moves.size() < 2 || !moves.subList(moves.size() - 2, moves.size()).contains(false);
  }

  private static boolean isPrinted(EngineJob state) {
    return state.standing().stream()
        .map(LoggedEntry::entry)
        .anyMatch(
            entry ->
                entry instanceof TagsPrinted printed
                    && printed.type() == wherefrom.parts.TagType.PART);
  }

  /** How many places are in a state. */
  public int count(PlaceState wanted) {
    return count(states, wanted);
  }

  /** How many places there are. */
  public int places() {
    return states.size();
  }

  /** What a day has open. */
  public int open(JobDay of) {
    return open.getOrDefault(of, 0);
  }

  /**
   * Whether a day is behind: nothing of it is open. What comes after taking apart is not behind
   * while parts are still to come out; of an engine that is together again some never did.
   */
  public boolean isDone(JobDay of) {
    boolean mayCome = of.compareTo(JobDay.APART) > 0 && open(JobDay.APART) > 0;
    boolean seen = of != JobDay.INSPECT || unlooked == 0;
    return open(of) == 0 && seen && (!mayCome || day == JobDay.RECORD);
  }
}
