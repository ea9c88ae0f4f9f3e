package wherefrom.job.numbers;

import wherefrom.inspection.Feature;
import wherefrom.rules.size.CutSurface;

/** The two kinds of bearing whose oil clearance has limits; the id stands in logbooks. */
public enum Bearings {
  MAINS("main", CutSurface.MAIN_JOURNAL, Feature.MAIN_JOURNAL),
  RODS("rod", CutSurface.ROD_JOURNAL, Feature.ROD_JOURNAL);

  private final String id;
  private final CutSurface surface;
  private final Feature journal;

  Bearings(String id, CutSurface surface, Feature journal) {
    this.id = id;
    this.surface = surface;
    this.journal = journal;
  }

  /** {@code main} or {@code rod}. */
  public String id() {
    return id;
  }

  Feature journal() {
    return journal;
  }

  /** The plan of readings of their journals. */
  String plan() {
    return surface.plan();
  }

  /** The sheet that keeps limits whose source nobody said yet. */
  String sheet() {
    return "clearance-limits-" + id;
  }
}
