package wherefrom.job.entry;

import wherefrom.inspection.Decision;

/** The person decided what to do with a part; the latest decision holds. */
public record DecisionMade(int item, Decision decision, String reason) implements JobEntry {}
