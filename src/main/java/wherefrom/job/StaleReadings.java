package wherefrom.job;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wherefrom.engine.Bank;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.Spots;
import wherefrom.engine.ValveSpot;
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
          Feature.CAM_JOURNAL, OTHER_CAM,
          Feature.VALVE_TIP, tipMoves());

  /** What moves the valve against its rocker or its piston. */
  private static Set<ChangeKind> tipMoves() {
    Set<ChangeKind> moves =
        EnumSet.of(
            ChangeKind.HEAD_MILLED,
            ChangeKind.DECK_MILLED,
            ChangeKind.GASKET_THICKNESS,
            ChangeKind.VALVE_JOB,
            ChangeKind.PISTONS_CHANGED);
    moves.addAll(OTHER_CAM);
    return moves;
  }

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
    return change.where().isEmpty()
        || change.where().equals(at.where())
        || Spots.find(at.where()).filter(ValveSpot.class::isInstance).stream()
            .map(ValveSpot.class::cast)
            .flatMap(valve -> wheres(valve).stream())
            .anyMatch(change.where()::equals);
  }

  /** The bank and the bore of a valve, as changes name them. */
  private List<String> wheres(ValveSpot valve) {
    List<String> wheres = new ArrayList<>();
    job.layout().findBank(valve.cylinder()).map(Bank::name).ifPresent(wheres::add);
    wheres.add(new BoreSpot(valve.cylinder()).key());
    return wheres;
  }
}
