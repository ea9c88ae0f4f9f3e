package wherefrom.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ClearancePair;
import wherefrom.inspection.measure.ClearancePairs;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.size.CutSurface;

/** The clearances that follow from pairs of readings: piston to bore, stem to guide and others. */
public final class PairClearances {
  private final EngineJob job;

  public PairClearances(EngineJob job) {
    this.job = job;
  }

  /** The pairs that this engine has. */
  public List<ClearancePair> pairs() {
    return ofThisEngine(pair -> true).toList();
  }

  private Stream<ClearancePair> ofThisEngine(Predicate<ClearancePair> wanted) {
    return ClearancePairs.all().stream()
        .filter(wanted)
        .filter(pair -> !pair.where(job.layout()).isEmpty());
  }

  /** A pair at every place, whether measured or not. */
  public List<PairClearance> list(ClearancePair pair) {
    return pair.where(job.layout()).stream().map(where -> of(pair, where)).toList();
  }

  /** Every pair at every place of which something is measured. */
  public List<PairClearance> measured() {
    return pairs().stream()
        .flatMap(pair -> list(pair).stream())
        .filter(one -> one.sequence() > 0)
        .toList();
  }

  /** Those that a part or a feature belongs to, whether measured or not. */
  public List<PairClearance> find(Subject subject) {
    return subject.match(
        tagged ->
            job.findPart(tagged.item()).stream().flatMap(record -> listFor(record.part())).toList(),
        this::listAt,
        beside -> List.of());
  }

  /** Those of the place that a part lies in now or will; none for one that was replaced. */
  private Stream<PairClearance> listFor(Part part) {
    Optional<Place> seat = job.findSeat(part.item());
    if (seat.isEmpty() && job.findOwner(part.home()).filter(part::equals).isEmpty()) {
      return Stream.empty();
    }
    String where = CutSurface.where(seat.orElse(part.home()));
    return ofThisEngine(pair -> pair.isOf(part.kind())).map(pair -> of(pair, where));
  }

  private List<PairClearance> listAt(Subject.AFeature at) {
    return ofThisEngine(pair -> pair.isOf(at.feature())).map(pair -> of(pair, at.where())).toList();
  }

  /** The part or the feature to measure next for a clearance, with its plan. */
  public Optional<Next> findNext(PairClearance clearance) {
    return Stream.of(clearance.pair().around(), clearance.pair().inside())
        .flatMap(
            side ->
                PairReadings.subject(job, side, clearance.where())
                    .filter(subject -> !isRead(subject, side.plan()))
                    .map(subject -> new Next(subject, side.plan()))
                    .stream())
        .findFirst();
  }

  private boolean isRead(Subject subject, String plan) {
    return job.measures()
        .findResult(subject, plan)
        .filter(MeasuredResult::isWhole)
        .filter(one -> !new StaleReadings(job).isStale(one))
        .isPresent();
  }

  /** What to measure by which plan. */
  public record Next(Subject subject, String plan) {}

  private PairClearance of(ClearancePair pair, String where) {
    return job.remember(Known.class, Known::new).of(pair, where);
  }

  /** Those that were asked for. */
  private record Known(EngineJob job, Map<String, PairClearance> all) {
    Known(EngineJob job) {
      this(job, new ConcurrentHashMap<>());
    }

    PairClearance of(ClearancePair pair, String where) {
      return all.computeIfAbsent(
          pair.key() + " " + where, key -> new PairReadings(job, pair, where).workOut());
    }
  }
}
