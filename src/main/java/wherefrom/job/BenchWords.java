package wherefrom.job;

import java.util.function.IntFunction;
import wherefrom.inspection.Check;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.entry.BudgetSet;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.ChangePlanned;
import wherefrom.job.entry.CostDropped;
import wherefrom.job.entry.CostNoted;
import wherefrom.job.entry.DebrisFound;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.LimitTyped;
import wherefrom.job.entry.PlanDropped;
import wherefrom.job.entry.PriceNoted;
import wherefrom.job.entry.ReadingsTaken;
import wherefrom.job.entry.Reidentified;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.job.entry.ShopLineBack;
import wherefrom.job.entry.SizeTyped;
import wherefrom.job.entry.SlotUnknown;
import wherefrom.job.entry.SubjectPhotographed;
import wherefrom.job.entry.ToolListed;
import wherefrom.job.entry.ZeroChecked;
import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.debris.DebrisFind;

/** What happened between the two days, in words: looks, plans, changes, checks. */
final class BenchWords {
  private BenchWords() {}

  /** A test by its title, or by its name where it is none of ours, and its answer. */
  static String look(String check, Look look) {
    String title = Checks.find(check).map(Check::title).orElse(check);
    return title + (title.endsWith("?") ? " " : ": ") + look.word();
  }

  /** The entry in words, without a full stop. */
  static String of(JobEntry entry, IntFunction<String> part) {
    if (entry instanceof SubjectPhotographed photo) {
      return "photograph of " + subject(photo.subject(), part);
    }
    if (entry instanceof FeatureLooked look) {
      return subject(look.subject(), part) + ", " + look(look.check(), look.look());
    }
    if (entry instanceof ChangePlanned plan) {
      Change change = new Change(plan.change(), plan.where(), plan.detail());
      return "plan " + plan.plan() + ": " + change.words();
    }
    if (entry instanceof PlanDropped dropped) {
      return "plan " + dropped.plan() + " dropped";
    }
    if (entry instanceof ChangeMade made) {
      return "done or found: " + new Change(made.change(), made.where(), made.detail()).words();
    }
    if (entry instanceof SlotUnknown unknown) {
      return part.apply(unknown.item()) + ": slot unknown";
    }
    return measured(entry, part);
  }

  private static String measured(JobEntry entry, IntFunction<String> part) {
    if (entry instanceof ReadingsTaken taken) {
      return subject(taken.subject(), part)
          + ": "
          + ReadingPlans.find(taken.plan()).map(ReadingPlan::title).orElse(taken.plan())
          + " measured";
    }
    if (entry instanceof ToolListed tool) {
      return "tool listed: " + tool.name();
    }
    if (entry instanceof ZeroChecked zero) {
      return zero.tool() + " at zero: " + zero.figure() + " " + zero.unit();
    }
    if (entry instanceof LimitTyped limit) {
      return "limit typed for " + limit.plan() + ", " + limit.result() + ": " + limit.source();
    }
    if (entry instanceof SizeTyped size) {
      return "standard size of " + size.plan() + ": " + size.figure() + " " + size.unit();
    }
    if (entry instanceof DebrisFound found) {
      return "debris: " + new DebrisFind(found.place(), found.look()).words();
    }
    if (entry instanceof Reidentified told) {
      return part.apply(told.item()) + " told by its readings, " + told.confidence();
    }
    return shopAndMoney(entry);
  }

  private static String shopAndMoney(JobEntry entry) {
    if (entry instanceof ShopLineAdded line) {
      return "visit " + line.visit() + ": " + line.count() + " " + line.what();
    }
    if (entry instanceof ShopLineBack back) {
      return "visit " + back.visit() + ", line " + back.line() + ": " + back.count() + " back";
    }
    if (entry instanceof CostNoted cost) {
      return cost.what() + ", " + cost.state().words() + ": " + Money.ofCents(cost.cents()).text();
    }
    if (entry instanceof CostDropped dropped) {
      return "cost line " + dropped.line() + " struck out";
    }
    if (entry instanceof BudgetSet budget) {
      return "budget " + Money.ofCents(budget.cents()).text() + " " + budget.currency();
    }
    if (entry instanceof PriceNoted price) {
      return "price of " + price.what() + ": " + Money.ofCents(price.cents()).text();
    }
    return NumberWords.of(entry);
  }

  static String subject(String key, IntFunction<String> part) {
    return Subject.find(key)
        .map(
            subject ->
                subject instanceof Subject.APart tagged
                    ? part.apply(tagged.item())
                    : ((Subject.AFeature) subject).words())
        .orElse(key);
  }
}
