package wherefrom.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.engine.MainSpot;
import wherefrom.engine.RodSpot;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;

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
      feature
          .where(job.layout())
          .forEach(where -> all.add(of(new Subject.AFeature(feature, where))));
    }
    return all;
  }

  /** The clearance of the bearing that a journal or a housing belongs to. */
  public Optional<BearingClearance> find(Subject subject) {
    if (subject instanceof Subject.APart tagged) {
      return job.findPart(tagged.item()).flatMap(record -> findFor(record.part()));
    }
    Subject.AFeature at = (Subject.AFeature) subject;
    return switch (at.feature()) {
      case MAIN_JOURNAL, MAIN_HOUSING ->
          Optional.of(of(new Subject.AFeature(Feature.MAIN_JOURNAL, at.where())));
      case ROD_JOURNAL, ROD_HOUSING ->
          Optional.of(of(new Subject.AFeature(Feature.ROD_JOURNAL, at.where())));
      default -> Optional.empty();
    };
  }

  /** The clearance of the bearing that a shell lies in now or will; empty for other parts. */
  public Optional<BearingClearance> findFor(Part part) {
    boolean owner = job.findOwner(part.home()).filter(part::equals).isPresent();
    if (owner
        && part.kind() == PartKind.MAIN_SHELL
        && part.home().spot() instanceof MainSpot main) {
      return Optional.of(of(new Subject.AFeature(Feature.MAIN_JOURNAL, "M" + main.number())));
    }
    if (owner && part.kind() == PartKind.ROD_SHELL && part.home().spot() instanceof RodSpot rod) {
      return Optional.of(of(new Subject.AFeature(Feature.ROD_JOURNAL, "B" + rod.cylinder())));
    }
    return Optional.empty();
  }

  private BearingClearance of(Subject.AFeature journal) {
    return new ClearanceReadings(job, journal).workOut();
  }
}
