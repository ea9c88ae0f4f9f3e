package wherefrom.job;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;

/** Readings of a surface that was worked on, or exchanged, since they were taken. */
public final class StaleReadings {
  private static final Set<ChangeKind> OTHER_CAM =
      EnumSet.of(
          ChangeKind.NEW_FLAT_CAM,
          ChangeKind.NEW_ROLLER_CAM,
          ChangeKind.FLAT_TO_ROLLER,
          ChangeKind.ROLLER_TO_FLAT);

  private static final Map<Feature, Set<ChangeKind>> BY =
      Map.of(
          Feature.BORE, EnumSet.of(ChangeKind.HONED),
          Feature.RINGS, EnumSet.of(ChangeKind.HONED, ChangeKind.BORED, ChangeKind.PISTONS_CHANGED),
          Feature.CAM_JOURNAL, OTHER_CAM);

  private final EngineJob job;

  public StaleReadings(EngineJob job) {
    this.job = job;
  }

  /** Whether the surface is no more what was read. */
  public boolean isStale(MeasuredResult result) {
    return result.subject() instanceof Subject.AFeature at
        && (new SurfaceSizes(job).isOfBefore(result)
            || changedSince(at, job.measures().takenAt(at, result.plan().key())));
  }

  private boolean changedSince(Subject.AFeature at, long taken) {
    Set<ChangeKind> kinds = BY.getOrDefault(at.feature(), Set.of());
    return !kinds.isEmpty()
        && MadeChanges.of(job).stream()
            .filter(made -> made.sequence() > taken)
            .map(MadeChange::change)
            .anyMatch(change -> kinds.contains(change.kind()) && reaches(change, at));
  }

  private boolean reaches(Change change, Subject.AFeature at) {
    return change.where().isEmpty() || change.where().equals(at.where());
  }
}
