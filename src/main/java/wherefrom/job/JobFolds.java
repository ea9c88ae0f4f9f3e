package wherefrom.job;

import java.util.Set;
import java.util.TreeSet;
import wherefrom.engine.Layout;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.KindsTracked;
import wherefrom.job.entry.PlaceExcused;
import wherefrom.parts.PartKind;

/**
 * What the entries of a job are folded into, each fold for itself: parts, what is fitted, stops.
 */
final class JobFolds {
  private static final EntryFold<JobFolds> READS =
      EntryFold.<JobFolds>none()
          .on(JobOpened.class, (folds, opened) -> folds.parts.open(opened))
          .on(KindsTracked.class, JobFolds::track)
          .at(PlaceExcused.class, (folds, excuse, at) -> folds.seats.excuse(excuse, at));

  private final Layout layout;
  private final Set<PartKind> kinds;
  private final PartsLedger parts;
  private final Assembly assembly;
  private final Seats seats;
  private final Stops stops;
  private final Pairs pairs;
  private final Inspection inspection;
  private final InService service;
  private final BigPartPlaces bigParts;

  JobFolds(JobOpened opened) {
    layout = opened.layout();
    kinds = new TreeSet<>(opened.kinds());
    parts = new PartsLedger();
    assembly = new Assembly();
    seats = new Seats(parts, assembly);
    stops = new Stops(parts);
    pairs = new Pairs(parts, seats);
    inspection = new Inspection();
    service = new InService();
    bigParts = new BigPartPlaces();
  }

  /** As others are now; what changes in one of them later does not in the other. */
  JobFolds(JobFolds other) {
    layout = other.layout;
    kinds = new TreeSet<>(other.kinds);
    parts = new PartsLedger(other.parts);
    assembly = new Assembly(other.assembly);
    seats = new Seats(parts, assembly);
    stops = new Stops(other.stops, parts);
    pairs = new Pairs(other.pairs, parts, seats);
    inspection = new Inspection(other.inspection);
    service = new InService(other.service);
    bigParts = new BigPartPlaces(other.bigParts);
  }

  /** Takes in the next entry. */
  void take(LoggedEntry logged) {
    READS.take(this, logged);
    inspection.apply(logged);
    parts.apply(logged);
    assembly.apply(logged);
    stops.apply(logged);
    service.apply(logged);
    bigParts.apply(logged);
    pairs.apply(logged);
  }

  private void track(KindsTracked tracked) {
    kinds.addAll(tracked.kinds());
    parts.track(layout, tracked);
  }

  Set<PartKind> kinds() {
    return Set.copyOf(kinds);
  }

  PartsLedger parts() {
    return parts;
  }

  Assembly assembly() {
    return assembly;
  }

  Seats seats() {
    return seats;
  }

  Stops stops() {
    return stops;
  }

  Pairs pairs() {
    return pairs;
  }

  Inspection inspection() {
    return inspection;
  }

  BigPartPlaces bigParts() {
    return bigParts;
  }

  InService service() {
    return service;
  }
}
