package wherefrom.ui.home;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.demo.DemoJob;
import wherefrom.drawing.Sign;
import wherefrom.engine.Spots;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.PlaceState;
import wherefrom.job.bags.BagBook;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.running.ServiceBook;
import wherefrom.job.shelf.JobDay;
import wherefrom.job.shelf.NextDeed;
import wherefrom.job.shelf.Standing;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.parts.Place;
import wherefrom.text.Words;
import wherefrom.ui.app.Dates;
import wherefrom.ui.drawn.PlaceCounts.Count;
import wherefrom.ui.running.ServiceWords;
import wherefrom.ui.takeapart.PartName;

/** What a job's first screen says: the one thing to do, where the parts are, the five days. */
final class JobHomeModel {

  /**
   * The one thing to do.
   *
   * @param words what
   * @param more how else, or what it is about
   */
  record Deed(NextDeed next, String words, String more) {
    boolean isStop() {
      return next.kind() == NextDeed.Kind.SOLVE_STOP;
    }
  }

  private final OpenJob job;
  private final boolean brief;
  private final Standing standing;
  private final Deed deed;

  /**
   * @param brief whether few words are wanted, as with large text
   */
  JobHomeModel(OpenJob job, OutOrder order, boolean brief) {
    this.job = job;
    this.brief = brief;
    this.standing = Standing.of(job);
    NextDeed next = NextDeed.of(job, standing, order);
    this.deed = new Deed(next, words(next), more(next));
  }

  Standing standing() {
    return standing;
  }

  Deed deed() {
    return deed;
  }

  /** The place that the tag is about; none where there is none. */
  Set<Place> place() {
    return deed.next().place().map(Set::of).orElseGet(Set::of);
  }

  /** The place that the drawing points at; a stop has its ring and octagon instead. */
  Set<Place> here() {
    return deed.isStop() ? Set.of() : place();
  }

  private EngineJob state() {
    return job.state();
  }

  private String words(NextDeed next) {
    return switch (next.kind()) {
      case SOLVE_STOP ->
          next.count() > 1 || brief ? Words.count(next.count(), "stop") : "A stop is waiting";
      case PRINT_TAGS -> "Print the tags first";
      case TAKE_OUT, FIT -> goOn(next, next.kind() == NextDeed.Kind.FIT ? "put together" : "apart");
      case HELD -> named(next).map(Words::capital).orElse("Held") + ": " + next.words();
      case DECIDE -> "Go on: decide";
      case LOOK_AGAIN -> named(next).map(name -> "Look again: " + name).orElse("Look again");
      case CLOSE_SECTIONS -> "Finish each section";
      case FIRST_START -> "Before the first start";
      case RUN_IN -> "Back to the clock";
      case RUN_IN_AGAIN -> "Run-in: it was stopped";
      case SERVICE -> "After the run-in";
      case IN_SERVICE -> "In service";
    };
  }

  private String goOn(NextDeed next, String without) {
    return "Go on: " + named(next).orElse(without);
  }

  private Optional<String> named(NextDeed next) {
    if (next.kind() == NextDeed.Kind.TAKE_OUT && !next.words().isEmpty()) {
      return Optional.of(next.words());
    }
    return next.place()
        .map(place -> PartName.of(standing.layout(), place))
        .map(name -> brief ? name.brief() : name.inLine());
  }

  private String more(NextDeed next) {
    return switch (next.kind()) {
      case SOLVE_STOP ->
          (next.count() > 1 && !brief ? "first: " : "")
              + job.stops().findWaiting().map(this::stop).orElse("");
      case PRINT_TAGS -> next.count() + " tags, before the first bolt";
      case TAKE_OUT, FIT -> "or scan any tag";
      case HELD -> "the first of " + next.count() + " held";
      case DECIDE -> waits(next.count());
      case LOOK_AGAIN -> "something stands against " + next.count();
      case CLOSE_SECTIONS -> "every place is filled";
      case FIRST_START -> "every section is finished";
      case RUN_IN -> "the engine runs in";
      case RUN_IN_AGAIN -> "take it up again";
      case SERVICE, IN_SERVICE -> ServiceWords.due(ServiceBook.of(state()));
    };
  }

  private static String waits(int count) {
    return count == 1 ? "1 part waits for a decision" : count + " parts wait for a decision";
  }

  /**
   * {@code other place: 3 EX pushrod, at 5 EX}; in few words {@code 3 EX pushrod, at 5 EX}: the
   * drawing shows where it was stopped, not where its home is.
   */
  private String stop(StopGiven stop) {
    return state()
        .findPart(stop.item())
        .map(part -> PartName.of(standing.layout(), part.part()))
        .map(
            name ->
                brief ? brief(stop, name) : stop.word().word() + ": " + name.inLine() + at(stop))
        .orElse(stop.word().word());
  }

  /** Large letters have few lines, and no name is parted. */
  private static String brief(StopGiven stop, PartName name) {
    String whole = name.brief().replace(' ', '\u00a0');
    String at =
        Spots.find(stop.spot())
            .map(spot -> ", at\u00a0" + spot.brief().replace(' ', '\u00a0'))
            .orElse("");
    return at.isEmpty() ? stop.word().word() + ": " + whole : whole + at;
  }

  private static String at(StopGiven stop) {
    return Spots.find(stop.spot()).map(spot -> ", at " + spot.brief()).orElse("");
  }

  /**
   * Where the parts are, what is stopped first; places with none are left out. What is still in the
   * engine comes last: where there is no room for all, the title's row says it, too.
   */
  List<Count> counts() {
    List<Count> counts = new ArrayList<>();
    add(counts, Sign.OTHER, state().stops().waiting().size(), "stopped");
    add(counts, Sign.AGAINST, in(PlaceState.FITTED_BUT) + in(PlaceState.IN_BUT), "not cleared");
    add(counts, Sign.OUT, notStopped(PlaceState.OUT), "bench");
    add(counts, Sign.WASHING, notStopped(PlaceState.WASHING), "washing");
    add(counts, Sign.AT_SHOP, notStopped(PlaceState.AT_SHOP), "machine shop");
    add(counts, Sign.MISSING, notStopped(PlaceState.MISSING), "lost");
    BagBook book = BagBook.of(state());
    int off = book.bigPartsOff().size();
    int bags = book.openBags().size();
    add(counts, Sign.OUT, off, off == 1 ? "big part" : "big parts");
    add(counts, Sign.OUT, bags, bags == 1 ? "bag" : "bags");
    add(counts, Sign.IN, isBegun() ? in(PlaceState.IN) : 0, "in engine");
    return counts;
  }

  /** How many are there of which no stop waits: each part is counted once. */
  private int notStopped(PlaceState where) {
    long stopped =
        state().parts().stream()
            .map(PartRecord::part)
            .filter(part -> !state().stops().of(part.item()).isEmpty())
            .filter(part -> state().findOwner(part.home()).equals(Optional.of(part)))
            .filter(part -> standing.states().get(part.home()) == where)
            .count();
    return in(where) - (int) stopped;
  }

  /** While nothing is out, or all is together again, nobody asks how many are in. */
  private boolean isBegun() {
    return standing.day() == JobDay.APART
        || (standing.day() == JobDay.TOGETHER && standing.open(JobDay.TOGETHER) > 0);
  }

  private int in(PlaceState state) {
    return standing.count(state);
  }

  private static void add(List<Count> counts, Sign sign, int parts, String words) {
    if (parts > 0) {
      counts.add(new Count(sign, parts, words));
    }
  }

  /** When it was last worked on where that is a day ago or more, else how far it is. */
  String aside(Clock clock) {
    if (state().engine() == DemoJob.ENGINE) {
      // Its days are invented as well.
      return "demo · " + DayWords.sofar(standing);
    }
    return Dates.daysAgo(state().lastTouched(), clock) > 0
        ? "last work " + Dates.brief(state().lastTouched(), clock)
        : DayWords.sofar(standing);
  }
}
