package wherefrom.job.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.engine.LifterType;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.Setting;
import wherefrom.workings.ResultValue;
import wherefrom.workings.plan.PlanColumn;
import wherefrom.workings.plan.WhatIfEffect;

/** What a column of the plan does to the engine, as changes that the consequence rules know. */
final class PlanChanges {
  private PlanChanges() {}

  /** The changes, each at every place of the engine that it is done at. */
  static List<Change> of(PlanColumn column, Setting setting) {
    List<Change> changes = new ArrayList<>();
    for (WhatIfEffect consequence : column.consequences()) {
      for (ChangeKind kind : kinds(consequence, setting)) {
        for (String where : kind.reach().where(setting.layout())) {
          changes.add(said(kind, where, column));
        }
      }
    }
    return List.copyOf(changes);
  }

  /** Empty where no rule speaks of it. */
  private static List<ChangeKind> kinds(WhatIfEffect consequence, Setting setting) {
    return switch (consequence) {
      case HEAD_MILLED -> List.of(ChangeKind.HEAD_MILLED);
      case DECK_MILLED -> List.of(ChangeKind.DECK_MILLED);
      case GASKET_CHANGED -> List.of(ChangeKind.GASKET_THICKNESS);
      case PUSHROD_LENGTH_CHANGED -> List.of(ChangeKind.PUSHROD_REPLACED);
      case LIFT_INCREASED -> List.of(ChangeKind.LIFT_INCREASED);
      case CAM_CHANGED ->
          List.of(
              setting.lifters() == LifterType.FLAT
                  ? ChangeKind.NEW_FLAT_CAM
                  : ChangeKind.NEW_ROLLER_CAM);
      case ROCKER_RATIO_CHANGED -> List.of(ChangeKind.ROCKER_RATIO);
      case SEAT_WORK -> List.of(ChangeKind.VALVE_JOB);
      case BORED -> List.of(ChangeKind.BORED);
      case SPRINGS_CHANGED -> List.of(ChangeKind.SPRINGS_CHANGED);
      case SPRINGS_SHIMMED -> List.of(ChangeKind.SPRINGS_SHIMMED);
      case CRANK_CHANGED -> List.of(ChangeKind.CRANK_CHANGED);
      case PISTONS_CHANGED -> List.of(ChangeKind.PISTONS_CHANGED);
      case INTAKE_CORRECTED -> List.of();
    };
  }

  private static Change said(ChangeKind kind, String where, PlanColumn column) {
    String key =
        switch (kind) {
          case HEAD_MILLED -> "head-cut";
          case PUSHROD_REPLACED -> "pushrod-change";
          default -> "";
        };
    Optional<ResultValue> value = column.result().findValue(key);
    return new Change(
        kind, where, value.map(ResultValue::amount), value.map(ResultValue::text).orElse(""));
  }
}
