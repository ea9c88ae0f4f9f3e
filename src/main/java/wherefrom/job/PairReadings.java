package wherefrom.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.Site;
import wherefrom.engine.Spot;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ClearancePair;
import wherefrom.inspection.measure.Limit;
import wherefrom.inspection.measure.Sample;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;
import wherefrom.workings.Share;

/** Brings the readings of both surfaces of one pair together at one place. */
final class PairReadings {
  private final EngineJob job;
  private final ClearancePair pair;
  private final String where;
  private final List<String> missing = new ArrayList<>();
  private long sequence;

  PairReadings(EngineJob job, ClearancePair pair, String where) {
    this.job = job;
    this.pair = pair;
    this.where = where;
  }

  /** The part or the feature of one side; empty where no such part is tracked. */
  static Optional<Subject> subject(EngineJob job, ClearancePair.Side side, String where) {
    return side.feature()
        .<Subject>map(feature -> new Subject.AFeature(feature, where))
        .or(
            () ->
                side.kind()
                    .flatMap(kind -> findPlace(kind, Site.of(where)))
                    .flatMap(place -> part(job, place))
                    .map(part -> Subject.ofPart(part.item())));
  }

  /** The part that is fitted counts before the one that came out. */
  private static Optional<Part> part(EngineJob job, Place place) {
    return job.findFitted(place).or(() -> job.findOwner(place));
  }

  private static Optional<Place> findPlace(PartKind kind, Site site) {
    Optional<? extends Spot> spot =
        kind == PartKind.ROD
            ? site.findCylinder().map(cylinder -> new RodSpot(cylinder, ShellHalf.UPPER))
            : site.findSpot();
    return spot.filter(at -> Place.canLive(kind, at)).map(at -> new Place(kind, at));
  }

  PairClearance workOut() {
    Optional<MeasuredResult> around = take(pair.around());
    Optional<MeasuredResult> inside = take(pair.inside());
    if (around.isEmpty() || inside.isEmpty()) {
      return answer(List.of());
    }
    List<PairClearance.At> all = new ArrayList<>();
    for (ClearancePair.Facing facing : pair.facings()) {
      List<Sized> outer = sizes(around.get(), facing.around());
      List<Sized> inner = sizes(inside.get(), facing.inside());
      all.add(
          new PairClearance.At(
              facing,
              clearance(outer.get(0), inner.get(inner.size() - 1)),
              clearance(outer.get(outer.size() - 1), inner.get(0))));
    }
    return answer(all);
  }

  private PairClearance answer(List<PairClearance.At> all) {
    List<ResultValue> values = new ArrayList<>();
    all.forEach(at -> values.addAll(List.of(at.least(), at.most())));
    Optional<ClearanceRange> range = ClearanceRange.ofValues(values);
    boolean tight = !pair.tight() && range.filter(PairReadings::isTight).isPresent();
    Optional<Limit> limit = job.measures().findLimit(pair.key(), ClearancePair.CLEARANCE);
    long since = sequence == 0 ? 0 : Math.max(sequence, job.measures().limitedAt(pair.key()));
    return new PairClearance(
        pair,
        where,
        since,
        missing,
        all,
        range,
        tight ? Optional.empty() : range.flatMap(known -> limit.map(known::judge)),
        tight ? doesNotGoIn() : "");
  }

  /** Below nothing, whatever the readings are off by: twice their standard uncertainty. */
  private static boolean isTight(ClearanceRange range) {
    return range.smallest().value() + 2 * range.smallest().standardUncertainty() < 0;
  }

  private String doesNotGoIn() {
    return "By these readings the "
        + pair.inside().word()
        + " would not go into the "
        + pair.around().word()
        + ". Read both again.";
  }

  private Optional<MeasuredResult> take(ClearancePair.Side side) {
    Optional<Subject> subject = subject(job, side, where);
    Optional<MeasuredResult> result =
        subject
            .flatMap(one -> job.measures().findResult(one, side.plan()))
            .filter(MeasuredResult::isWhole)
            .filter(one -> !new StaleReadings(job).isStale(one));
    result.ifPresent(one -> sequence = Math.max(sequence, one.sequence()));
    if (result.isEmpty()) {
      missing.add(word(side) + (subject.isEmpty() ? " (not tracked)" : ""));
    }
    return result;
  }

  /** Both surfaces may belong to one part, as a pin and the bores of its piston do. */
  private static String word(ClearancePair.Side side) {
    return wherefrom.inspection.measure.ReadingPlans.find(side.plan())
        .map(plan -> plan.title().toLowerCase(Locale.ROOT))
        .orElse(side.word());
  }

  /** A size with its standard uncertainty, in one unit for all. */
  private record Sized(double value, double u, Unit unit) {}

  /** The smallest first. */
  private static List<Sized> sizes(MeasuredResult result, List<String> stations) {
    Unit unit = result.samples().get(0).unit();
    return result.samples().stream()
        .filter(sample -> stations.contains(sample.station().key()))
        .map(sample -> sized(result, sample, unit))
        .sorted(Comparator.comparingDouble(Sized::value))
        .toList();
  }

  private static Sized sized(MeasuredResult result, Sample sample, Unit unit) {
    var measured = sample.measured(result.tool());
    return new Sized(
        measured.value().in(unit),
        measured.standardUncertainty().map(u -> u.in(unit)).orElse(0.0),
        unit);
  }

  /** Independent readings: their uncertainties add in quadrature (JCGM 100:2008, 5.1.2). */
  private static ResultValue clearance(Sized outer, Sized inner) {
    Unit unit = outer.unit();
    double inside = Amount.of(inner.value(), inner.unit()).in(unit);
    double u = Amount.of(inner.u(), inner.unit()).in(unit);
    return new ResultValue(
        ClearancePair.CLEARANCE,
        "clearance",
        unit,
        outer.value() - inside,
        Math.hypot(outer.u(), u),
        List.<Share>of());
  }
}
