package wherefrom.job;

import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import wherefrom.inspection.measure.Sample;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.rules.size.CutSurface;

/**
 * The three sizes of one journal or bore, and the cut that is coming.
 *
 * @param where as {@link wherefrom.inspection.Feature#where} names it
 * @param standard when new; empty until it is typed
 * @param cut the last cut; empty where none is recorded
 * @param measured the readings of the surface as it is now; empty while there are none
 * @param coming the cut that is planned or at the shop
 */
public record SurfaceSize(
    CutSurface surface,
    String where,
    Optional<Amount> standard,
    Optional<LastCut> cut,
    Optional<MeasuredResult> measured,
    Optional<ComingCut> coming) {

  /** {@code rod journal 3}: by the rod for rod journals. */
  public String words() {
    return surface.subject(where).words();
  }

  /** The diameter it was cut to. */
  public Optional<Amount> asCut() {
    return cut.flatMap(one -> one.findDiameter(surface, standard));
  }

  /** The most worn reading, which tells how far it is worn. */
  public Optional<Amount> mostWorn() {
    return measured.map(result -> extreme(result, surface.wearsSmaller()));
  }

  /** The least worn reading, which tells to what it was cut. */
  public Optional<Amount> leastWorn() {
    return measured.map(result -> leastWorn(surface, result));
  }

  static Amount leastWorn(CutSurface surface, MeasuredResult result) {
    return extreme(result, !surface.wearsSmaller());
  }

  private static Amount extreme(MeasuredResult result, boolean smallest) {
    List<Amount> readings = result.samples().stream().map(SurfaceSize::mean).toList();
    BinaryOperator<Amount> least = (a, b) -> a.inBase().compareTo(b.inBase()) <= 0 ? a : b;
    BinaryOperator<Amount> most = (a, b) -> a.inBase().compareTo(b.inBase()) >= 0 ? a : b;
    return readings.stream().reduce(smallest ? least : most).orElseThrow();
  }

  /** One reading stands as typed; of several, the mean to a hundredth of the tool's places. */
  private static Amount mean(Sample sample) {
    if (sample.readings().size() == 1) {
      return sample.readings().get(0);
    }
    Unit unit = sample.unit();
    return Amount.of(sample.mean(), unit).rounded(unit == Unit.INCH ? 5 : 4);
  }
}
