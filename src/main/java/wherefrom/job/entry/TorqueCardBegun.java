package wherefrom.job.entry;

import java.util.List;

/**
 * A torque card was written: what a set of bolts is to be tightened to.
 *
 * @param rows of the grid that the bolts are drawn on
 * @param order the positions on the grid, row by row from 1, in the order of tightening
 * @param orderFrom where the order comes from; empty for centre outward, which is common practice
 * @param threads how they are prepared: a torque holds for that alone
 * @param stages as typed, a torque or an angle each: {@code 30 N·m}, {@code 90 deg}
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
    List<String> stages,
    String source)
    implements JobEntry {
  public TorqueCardBegun {
    order = List.copyOf(order);
    stages = List.copyOf(stages);
  }

  public TorqueCardBegun numbered(int number) {
    return new TorqueCardBegun(
        number, fastener, rows, columns, order, orderFrom, threads, stages, source);
  }
}
