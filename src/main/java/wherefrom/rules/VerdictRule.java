package wherefrom.rules;

import java.util.Optional;

/** One reason for a verdict. Pure: the same bench and attempt give the same answer. */
@FunctionalInterface
public interface VerdictRule {
  /** The verdict, when this rule applies. */
  Optional<Verdict> judge(JobFacts bench, Attempt attempt);
}
