package wherefrom.job.entry;

import java.util.List;
import wherefrom.rules.consequence.ShopWork;

/**
 * Parts went to the machine shop, on one visit.
 *
 * @param work its kind; entries of before kinds were asked for are {@link ShopWork#OTHER}
 */
public record SentToShop(int visit, List<Integer> items, String wanted, ShopWork work)
    implements JobEntry {
  public SentToShop {
    items = List.copyOf(items);
  }
}
