package wherefrom.job.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.EngineJob;
import wherefrom.job.FittingSize;
import wherefrom.job.SurfaceSize;
import wherefrom.job.SurfaceSizes;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.quantity.Amount;
import wherefrom.rules.size.CutSurface;

/**
 * The record's table of sizes: standard, as cut, as measured, and what of new parts goes with them.
 */
final class RecordSizes {
  private final EngineJob job;
  private final SurfaceSizes sizes;

  RecordSizes(EngineJob job) {
    this.job = job;
    this.sizes = new SurfaceSizes(job);
  }

  /** What nobody typed, cut or measured is left out. */
  RecordSection section() {
    List<RecordSection.Row> rows = new ArrayList<>();
    for (SurfaceSize size : sizes.list()) {
      if (size.cut().isPresent() || size.measured().isPresent() || size.coming().isPresent()) {
        rows.add(row(size));
      }
    }
    return new RecordSection(
        RecordTable.SIZES,
        List.of("what", "standard", "as cut", "measured now", "fits", "new parts"),
        rows,
        "No journal or bore was measured or cut.");
  }

  private RecordSection.Row row(SurfaceSize size) {
    FittingSize fits = sizes.getFitting(size);
    String coming =
        size.coming()
            .map(one -> ", to be " + size.surface().cut() + " (" + one.by() + ")")
            .orElse("");
    return new RecordSection.Row(
        List.of(
            size.words(),
            text(size.standard()),
            size.asCut().map(Amount::text).orElse(size.cut().isPresent() ? "not said" : "not cut")
                + coming,
            measured(size),
            fits.words(),
            newParts(size)),
        !fits.isKnown());
  }

  private static String measured(SurfaceSize size) {
    String least = text(size.leastWorn());
    String most = text(size.mostWorn());
    return least.equals(most) ? least : least + " to " + most;
  }

  private static String text(Optional<Amount> amount) {
    return amount.map(Amount::text).orElse("");
  }

  /** The sizes said of the new parts whose place is here, each once. */
  private String newParts(SurfaceSize at) {
    return String.join(
        ", ",
        job.places().stream()
            .filter(place -> place.kind() == at.surface().kind())
            .filter(place -> CutSurface.where(place).equals(at.where()))
            .flatMap(place -> said(at.surface(), place).stream())
            .distinct()
            .toList());
  }

  private Optional<String> said(CutSurface surface, Place place) {
    return job.findOwner(place)
        .filter(Part::fresh)
        .flatMap(part -> sizes.findSizeOf(part.item()))
        .map(surface::words);
  }
}
