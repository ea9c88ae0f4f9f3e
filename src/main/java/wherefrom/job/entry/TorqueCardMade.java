package wherefrom.job.entry;

import java.util.List;

/**
 * A torque card was written.
 *
 * @param card counted from 1
 * @param order the bolts' numbers in the order of tightening
 * @param orderSource where the order comes from; empty for centre outward
 * @param threads how the threads are prepared
 * @param stages torques and angles as typed: {@code 30 lb·ft}, {@code 90 deg}
 * @param source where the figures come from
 */
public record TorqueCardMade(
    int card,
    String fastener,
    int rows,
    int columns,
    List<Integer> order,
    String orderSource,
    String threads,
    List<String> stages,
    String source)
    implements JobEntry {
  public TorqueCardMade {
    order = List.copyOf(order);
    stages = List.copyOf(stages);
  }
}
