package wherefrom.job.entry;

import java.util.List;
import wherefrom.inspection.Decision;

/** The person decided about several parts in one act, which is also taken back as one. */
public record SetDecided(List<Integer> items, Decision decision, String reason)
    implements JobEntry, DecisionEntry {
  public SetDecided {
    items = List.copyOf(items);
  }
}
