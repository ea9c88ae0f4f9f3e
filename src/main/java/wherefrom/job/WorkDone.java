package wherefrom.job;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.entry.ChangeMade;
import wherefrom.rules.consequence.Change;

/** The changes that were recorded, and those that came back from the machine shop, in order. */
public final class WorkDone {
  private WorkDone() {}

  public static List<MadeChange> of(EngineJob job) {
    ShopChanges shop = new ShopChanges(job);
    List<MadeChange> done = new ArrayList<>();
    for (LoggedEntry logged : job.standing()) {
      List<Change> changes = new ArrayList<>(shop.take(logged));
      if (logged.entry() instanceof ChangeMade made) {
        changes.add(new Change(made.change(), made.where(), made.detail()));
      }
      changes.forEach(change -> done.add(new MadeChange(logged.sequence(), change, true, 0)));
    }
    return List.copyOf(done);
  }

  /** Those that came back from the machine shop alone. */
  public static List<Change> fromShop(EngineJob job) {
    ShopChanges shop = new ShopChanges(job);
    return job.standing().stream().flatMap(logged -> shop.take(logged).stream()).toList();
  }
}
