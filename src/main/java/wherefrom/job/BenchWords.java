package wherefrom.job;

import java.util.function.IntFunction;
import wherefrom.inspection.Subject;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.ChangePlanned;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.PlanDropped;
import wherefrom.job.entry.SlotUnknown;
import wherefrom.rules.consequence.Change;

/** What happened between the two days, in words: looks, plans, changes, checks. */
final class BenchWords {
  private BenchWords() {}

  /** The entry in words, without a full stop. */
  static String of(JobEntry entry, IntFunction<String> part) {
    if (entry instanceof FeatureLooked look) {
      return subject(look.subject(), part) + ", " + look.check() + ": " + look.look().word();
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
    if (entry instanceof CheckAnswered answered) {
      return "check " + answered.check() + ": " + answered.look().word();
    }
    if (entry instanceof SlotUnknown unknown) {
      return part.apply(unknown.item()) + ": slot unknown";
    }
    throw new IllegalArgumentException("no words for " + entry.getClass().getSimpleName());
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
