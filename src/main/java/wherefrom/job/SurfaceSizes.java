package wherefrom.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.entry.PartSort;
import wherefrom.parts.Place;
import wherefrom.quantity.Amount;
import wherefrom.rules.size.CutSurface;

/**
 * The sizes of journals and bores, standard, as cut and as measured, and of the parts that fit
 * them. A pure function of the job.
 */
public final class SurfaceSizes {
  private final EngineJob job;
  private final SurfaceCuts cuts;
  private final ComingCuts coming;
  private final NewSizes news;

  public SurfaceSizes(EngineJob job) {
    this.job = job;
    cuts = SurfaceCuts.of(job);
    coming = job.told().coming();
    news = job.told().news();
  }

  /** Every journal and bore, main journals first. */
  public List<SurfaceSize> list() {
    List<SurfaceSize> all = new ArrayList<>();
    for (CutSurface surface : CutSurface.values()) {
      all.addAll(list(surface));
    }
    return all;
  }

  /** Every one of a kind. */
  public List<SurfaceSize> list(CutSurface surface) {
    return surface.listWhere(job.layout()).stream().map(where -> get(surface, where)).toList();
  }

  /** The sizes of one journal or bore. */
  public SurfaceSize get(CutSurface surface, String where) {
    return new SurfaceSize(
        surface,
        where,
        job.measures().findSize(surface.plan()),
        cuts.find(surface, where),
        measured(surface, where),
        coming.find(surface, where));
  }

  /** What is measured of the surface as it is now: not what was measured before it was cut. */
  private Optional<MeasuredResult> measured(CutSurface surface, String where) {
    return job.measures()
        .findResult(surface.subject(where), surface.plan())
        .filter(MeasuredResult::isWhole)
        .filter(result -> !isOfBefore(surface, where, result));
  }

  /** A reading older than the cut counts all the same where it agrees with the size cut to. */
  private boolean isOfBefore(CutSurface surface, String where, MeasuredResult result) {
    Optional<Amount> standard = job.measures().findSize(surface.plan());
    Optional<LastCut> cut =
        cuts.find(surface, where)
            .filter(
                one ->
                    job.measures().takenAt(surface.subject(where), surface.plan())
                        < one.sequence());
    return cut.isPresent()
        && !cut.get()
            .findDiameter(surface, standard)
            .map(size -> FittingSizes.isNear(size, SurfaceSize.leastWorn(surface, result)))
            .orElse(false);
  }

  /** Whether a reading of a journal or a bore is of the surface as it was before its last cut. */
  boolean isOfBefore(MeasuredResult result) {
    return result.subject() instanceof wherefrom.inspection.Subject.AFeature at
        && CutSurface.find(at.feature())
            .filter(surface -> surface.plan().equals(result.plan().key()))
            .filter(surface -> isOfBefore(surface, at.where(), result))
            .isPresent();
  }

  /** The size of the part that fits the surface as it is. */
  public Optional<FittingSize> findFitting(Place place) {
    return CutSurface.find(place.kind()).map(surface -> fitting(surface, CutSurface.where(place)));
  }

  /** The size of the part that fits a surface as it is. */
  public FittingSize getFitting(SurfaceSize size) {
    return fitting(size.surface(), size.where());
  }

  /** The size to buy: for the surface as it will be where it is going to be cut. */
  public Optional<FittingSize> findToBuy(Place place) {
    return CutSurface.find(place.kind())
        .map(surface -> new FittingSizes(list(surface)).toBuy(CutSurface.where(place)));
  }

  private FittingSize fitting(CutSurface surface, String where) {
    return new FittingSizes(list(surface)).asItIs(where);
  }

  /** How far a new part is from the standard size; empty where nobody said. */
  public Optional<Amount> findSizeOf(int item) {
    return news.findSize(item);
  }

  /** Of which other sort a new part is than the old one; empty where nobody said. */
  public Optional<PartSort> findSortOf(int item) {
    return news.findSort(item);
  }

  /** Whether it was said that the part is of the size that its place was cut to. */
  public boolean isOfSize(int item, Place place) {
    Optional<Amount> fits = findFitting(place).flatMap(FittingSize::step);
    Optional<Amount> said = findSizeOf(item);
    return fits.isPresent() && said.isPresent() && FittingSizes.isNear(fits.get(), said.get());
  }

  /**
   * What speaks against a new part's size in a place, in a sentence; empty where nobody said its
   * size, or what fits is not known: an engine may have been ground before anybody wrote it down.
   */
  public Optional<String> findObjection(int item, Place place) {
    Optional<FittingSize> fits = findFitting(place).filter(FittingSize::isKnown);
    Optional<Amount> said = findSizeOf(item);
    if (fits.isEmpty() || said.isEmpty() || isOfSize(item, place)) {
      return Optional.empty();
    }
    CutSurface surface = CutSurface.find(place.kind()).orElseThrow();
    return Optional.of(
        (surface == CutSurface.BORE ? "This piston is " : "This shell is ")
            + surface.words(said.get())
            + "; "
            + because(surface, fits.get()));
  }

  private static String because(CutSurface surface, FittingSize fits) {
    String its = surface == CutSurface.BORE ? "its bore " : "the journal ";
    String size = surface.words(fits.step().orElseThrow());
    return switch (fits.basis()) {
      case MEASURED -> its + "measures " + size + ".";
      default -> its + "was cut to " + size + ".";
    };
  }
}
