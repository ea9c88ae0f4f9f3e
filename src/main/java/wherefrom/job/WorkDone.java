package wherefrom.job;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.entry.ChangeMade;
import wherefrom.rules.consequence.Change;

/** The changes that were recorded, and those that came back from the machine shop, in order. */
final class WorkDone {
  private WorkDone() {}

  static List<MadeChange> of(EngineJob job) {
    ShopChanges shop = new ShopChanges(job);
    List<MadeChange> done = new ArrayList<>();
    for (LoggedEntry logged : job.standing()) {
      if (logged.entry() instanceof ChangeMade made) {
        Change change = new Change(made.change(), made.where(), made.detail());
        done.add(new MadeChange(logged.sequence(), change, true));
      }
      shop.take(logged)
          .forEach(change -> done.add(new MadeChange(logged.sequence(), change, true)));
    }
    return List.copyOf(done);
  }

  /** Those that came back from the machine shop alone. */
  static List<MadeChange> fromShop(EngineJob job) {
    ShopChanges shop = new ShopChanges(job);
    List<MadeChange> done = new ArrayList<>();
    for (LoggedEntry logged : job.standing()) {
      shop.take(logged)
          .forEach(change -> done.add(new MadeChange(logged.sequence(), change, true)));
    }
    return List.copyOf(done);
  }
}
