package wherefrom.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.parts.Part;
import wherefrom.rules.size.CutSurface;

/** The oil clearance of every bearing, from its housing, its shells and its journal. */
public final class OilClearances {
  private final EngineJob job;

  public OilClearances(EngineJob job) {
    this.job = job;
  }

  /** Every main, then every rod, whether measured or not. */
  public List<BearingClearance> list() {
    List<BearingClearance> all = new ArrayList<>();
    for (Feature feature : List.of(Feature.MAIN_JOURNAL, Feature.ROD_JOURNAL)) {
      feature.where(job.layout()).forEach(where -> all.add(of(feature, where)));
    }
    return all;
  }

  /** The clearance of the bearing that a journal or a housing belongs to. */
  public Optional<BearingClearance> find(Subject subject) {
    return subject.match(
        tagged -> job.findPart(tagged.item()).flatMap(record -> findFor(record.part())),
        at -> findJournal(at.feature()).map(journal -> of(journal, at.where())),
        beside -> Optional.empty());
  }

  /** The journal that runs in a bearing. */
  private static Optional<Feature> findJournal(Feature feature) {
    return switch (feature) {
      case MAIN_JOURNAL, MAIN_HOUSING -> Optional.of(Feature.MAIN_JOURNAL);
      case ROD_JOURNAL, ROD_HOUSING -> Optional.of(Feature.ROD_JOURNAL);
      default -> Optional.empty();
    };
  }

  /** The clearance of the bearing that a shell lies in now or will; empty for other parts. */
  public Optional<BearingClearance> findFor(Part part) {
    if (job.findOwner(part.home()).filter(part::equals).isEmpty()) {
      return Optional.empty();
    }
    String where = CutSurface.where(part.home());
    return switch (part.kind()) {
      case MAIN_SHELL -> Optional.of(of(Feature.MAIN_JOURNAL, where));
      case ROD_SHELL -> Optional.of(of(Feature.ROD_JOURNAL, where));
      default -> Optional.empty();
    };
  }

  private BearingClearance of(Feature feature, String where) {
    return of(new Subject.AFeature(feature, where));
  }

  private BearingClearance of(Subject.AFeature journal) {
    return job.workedOut().clearance(journal);
  }
}
