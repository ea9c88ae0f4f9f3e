package wherefrom.job.entry;

import java.util.List;

/** Parts went to the machine shop, on one visit. */
public record SentToShop(int visit, List<Integer> items, String wanted) implements JobEntry {
  public SentToShop {
    items = List.copyOf(items);
  }
}
