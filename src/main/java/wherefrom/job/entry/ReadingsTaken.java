package wherefrom.job.entry;

import java.util.List;

/**
 * Something was measured by a plan of readings; taken again, the later ones count.
 *
 * @param subject the {@link wherefrom.inspection.Subject#key()}
 * @param confirmed whether the person confirmed readings that were questioned
 */
public record ReadingsTaken(
    String subject,
    String plan,
    String tool,
    List<TakenReading> readings,
    boolean confirmed,
    String note)
    implements JobEntry {
  public ReadingsTaken {
    readings = List.copyOf(readings);
  }
}
