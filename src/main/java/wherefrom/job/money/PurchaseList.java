package wherefrom.job.money;

import java.util.List;
import wherefrom.job.EngineJob;
import wherefrom.job.entry.CostState;

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

  private boolean isOrdered(String what) {
    return new MoneyEntries(job)
        .lines().stream()
            .filter(line -> line.what().strip().equalsIgnoreCase(what))
            .anyMatch(
                line -> line.state() == CostState.COMMITTED || line.state() == CostState.PAID);
  }
}
