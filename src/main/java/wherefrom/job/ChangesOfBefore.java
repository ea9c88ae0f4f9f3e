package wherefrom.job;

import java.util.Optional;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.ChangePlanned;
import wherefrom.job.entry.JobEntry;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;
import wherefrom.rules.size.ChangeText;

/** Changes of logbooks whose sizes carry no unit: they are in the unit of the job. */
final class ChangesOfBefore {
  private static final EntryTable<Unit, Optional<JobEntry>> READ =
      EntryRows.<Unit, Optional<JobEntry>>none()
          .on(
              ChangePlanned.class,
              (usual, it) ->
                  Optional.of(new ChangePlanned(it.plan(), ChangeText.in(usual, it.change()))))
          .on(
              ChangeMade.class,
              (usual, it) ->
                  Optional.of(new ChangeMade(it.plan(), ChangeText.in(usual, it.change()))))
          .others(Optional.empty());

  private ChangesOfBefore() {}

  /** The entry with its size read; any other as it is. */
  static LoggedEntry read(LoggedEntry logged, UnitSystem units) {
    Unit usual = FigureParser.usual(units, Dimension.LENGTH);
    return READ.of(usual, logged.entry()).map(logged::with).orElse(logged);
  }
}
