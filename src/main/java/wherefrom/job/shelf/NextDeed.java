package wherefrom.job.shelf;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigPartOrder;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.puttogether.FirstStart;
import wherefrom.job.puttogether.ToFit;
import wherefrom.job.running.RunIn;
import wherefrom.job.running.ServiceBook;
import wherefrom.job.takeapart.NextOut;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.parts.Place;

/**
 * The one thing to do now in a job.
 *
 * @param kind what it is
 * @param place where it is; empty where it is nowhere in the engine
 * @param words the stop as it was said, the big part that comes off, or what holds the part; else
 *     empty
 * @param count stops that wait, tags to print, parts that want a decision, parts that something
 *     stands against, points of service that are due
 */
public record NextDeed(Kind kind, Optional<Place> place, String words, int count) {

  /** What there is to do. */
  public enum Kind {
    SOLVE_STOP,
    PRINT_TAGS,
    TAKE_OUT,
    DECIDE,
    FIT,
    HELD,
    LOOK_AGAIN,
    CLOSE_SECTIONS,
    FIRST_START,
    RUN_IN,
    RUN_IN_AGAIN,
    SERVICE,
    IN_SERVICE
  }

  /**
   * What to do now.
   *
   * @param order in which parts are proposed to come out
   */
  public static NextDeed of(OpenJob job, Standing standing, OutOrder order) {
    Optional<RunIn> run = RunIn.find(job.state());
    if (standing.inService() || run.filter(RunIn::isRunning).isPresent()) {
      Kind kind = standing.inService() ? Kind.IN_SERVICE : Kind.RUN_IN;
      return deed(kind, Optional.empty(), standing.due());
    }
    Optional<StopGiven> stop = job.stops().findWaiting();
    if (stop.isPresent()) {
      return stopped(job, stop.get());
    }
    return switch (standing.day()) {
      case TAGS -> deed(Kind.PRINT_TAGS, Optional.empty(), standing.open(JobDay.TAGS));
      case APART -> takeOut(job.state(), order);
      case INSPECT -> deed(Kind.DECIDE, Optional.empty(), standing.open(JobDay.INSPECT));
      case TOGETHER, RECORD -> together(job, standing);
    };
  }

  private static NextDeed deed(Kind kind, Optional<Place> place, int count) {
    return new NextDeed(kind, place, "", count);
  }

  private static NextDeed stopped(OpenJob job, StopGiven stop) {
    EngineJob state = job.state();
    Optional<Spot> spot = Spots.find(stop.spot());
    Optional<Place> at =
        state
            .findPart(stop.item())
            .map(part -> part.part().home().kind())
            .flatMap(
                kind ->
                    spot.filter(where -> Place.canLive(kind, where))
                        .map(where -> new Place(kind, where)));
    int stops = state.stops().waiting().size();
    return new NextDeed(Kind.SOLVE_STOP, at, stop.sentence(), stops + others(job));
  }

  /** The parts that sit where something stands against them wait, too. */
  private static int others(OpenJob job) {
    return (int)
        new ToFit(job)
            .fittedBut().stream()
                .filter(one -> job.state().stops().of(one.part().item()).isEmpty())
                .count();
  }

  private static NextDeed takeOut(EngineJob state, OutOrder order) {
    Optional<Place> next =
        new NextOut(state, order, Set.of()).find().map(part -> part.part().home());
    Optional<BigPartRecord> lead = bigParts(state).findLead(next, Set.of());
    return lead.map(NextDeed::bigPart).orElseGet(() -> deed(Kind.TAKE_OUT, next, 0));
  }

  private static BigPartOrder bigParts(EngineJob state) {
    return new BigPartOrder(state, BagBook.of(state));
  }

  /** A big part that comes off first is nowhere among the places. */
  private static NextDeed bigPart(BigPartRecord part) {
    return new NextDeed(Kind.TAKE_OUT, Optional.empty(), part.words(), 0);
  }

  private static NextDeed together(OpenJob job, Standing standing) {
    ToFit missing = new ToFit(job);
    List<Place> open = missing.places();
    if (!open.isEmpty()) {
      return fit(missing, open);
    }
    List<ToFit.FittedBut> against = missing.fittedBut();
    if (!against.isEmpty()) {
      return deed(Kind.LOOK_AGAIN, Optional.of(against.get(0).place()), against.size());
    }
    boolean closed = new FirstStart(job).isDue();
    return closed
        ? deed(afterClosing(job.state()), Optional.empty(), standing.due())
        : deed(Kind.CLOSE_SECTIONS, Optional.empty(), 0);
  }

  private static Kind afterClosing(EngineJob state) {
    boolean stopped =
        RunIn.find(state).filter(run -> run.state() == RunIn.State.STOPPED).isPresent();
    if (ServiceBook.of(state).hasRunIn()) {
      return Kind.SERVICE;
    }
    return stopped ? Kind.RUN_IN_AGAIN : Kind.FIRST_START;
  }

  /** What lies on the bench and would not be stopped; where nothing does, what holds the first. */
  private static NextDeed fit(ToFit missing, List<Place> open) {
    Optional<Place> free = missing.findNext(open);
    Optional<ToFit.Held> held = missing.findHeld(open.get(0));
    return free.isPresent() || held.isEmpty()
        ? deed(Kind.FIT, free.or(() -> open.stream().findFirst()), open.size())
        : new NextDeed(
            Kind.HELD, Optional.of(held.get().place()), held.get().why().word(), open.size());
  }
}
