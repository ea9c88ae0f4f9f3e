package wherefrom.job.change;

import java.util.List;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.Consequence;

/**
 * A change that is only planned, with all that it would mean.
 *
 * @param number counted from 1
 */
public record PlannedChange(int number, Change change, List<Consequence> consequences) {
  public PlannedChange {
    consequences = List.copyOf(consequences);
  }
}
