package wherefrom.workings.plan;

import wherefrom.workings.Nonsense;

/** One column of a plan: worked out, or refused with a sentence. */
public sealed interface PlanAnswer permits PlanColumn, PlanAnswer.Refused {
  String name();

  /** The column's figures cannot be. */
  record Refused(String name, Nonsense nonsense) implements PlanAnswer {}
}
