package wherefrom.job.entry;

import java.util.List;
import wherefrom.quantity.Amount;

/**
 * A torque card was written: what a set of bolts is to be tightened to.
 *
 * @param rows of the grid that the bolts are drawn on
 * @param order the positions on the grid, row by row from 1, in the order of tightening
 * @param orderFrom where the order comes from; empty for centre outward, which is common practice
 * @param threads how they are prepared: a torque holds for that alone
 * @param stages a torque or an angle each
 * @param source where the figures come from
 */
public record TorqueCardBegun(
    int card,
    String fastener,
    int rows,
    int columns,
    List<Integer> order,
    String orderFrom,
    String threads,
    List<Amount> stages,
    String source)
    implements JobEntry {
  public TorqueCardBegun {
    order = List.copyOf(order);
    stages = List.copyOf(stages);
  }
}
