package wherefrom.job.entry;

import java.util.List;
import wherefrom.inspection.Decision;

/** The person decided what to do with a part; the latest decision holds. */
public record DecisionMade(int item, Decision decision, String reason)
    implements JobEntry, DecisionEntry {
  @Override
  public List<Integer> items() {
    return List.of(item);
  }
}
