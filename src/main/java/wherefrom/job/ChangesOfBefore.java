package wherefrom.job;

import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.ChangePlanned;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.size.ChangeText;

/** Changes of logbooks whose sizes carry no unit: they are in the unit of the job. */
final class ChangesOfBefore {
  private ChangesOfBefore() {}

  /** The entry with its size read; any other as it is. */
  static LoggedEntry read(LoggedEntry logged, UnitSystem units) {
    Unit usual = FigureParser.usual(units, Dimension.LENGTH);
    if (logged.entry() instanceof ChangePlanned planned) {
      Change change = ChangeText.in(usual, planned.change());
      return logged.with(new ChangePlanned(planned.plan(), change));
    }
    if (logged.entry() instanceof ChangeMade made) {
      Change change = ChangeText.in(usual, made.change());
      return logged.with(new ChangeMade(made.plan(), change));
    }
    return logged;
  }
}
