package wherefrom.job.money;

import java.util.List;
import wherefrom.job.EngineJob;
import wherefrom.job.entry.CostState;
import wherefrom.rules.consequence.Article;

/** What changes and findings ask to buy besides tagged parts that are to be replaced. */
public final class PurchaseList {
  private final EngineJob job;

  public PurchaseList(EngineJob job) {
    this.job = job;
  }

  /** One line for each thing; what is committed or paid is left out. */
  public List<Purchase> lines() {
    return CostList.standing(job).purchases().stream()
        .filter(thing -> !isOrdered(thing.what()))
        .toList();
  }

  private boolean isOrdered(Article what) {
    return new MoneyEntries(job)
        .lines().stream()
            .filter(line -> Article.read(line.what()).equals(what))
            .anyMatch(
                line -> line.state() == CostState.COMMITTED || line.state() == CostState.PAID);
  }
}
