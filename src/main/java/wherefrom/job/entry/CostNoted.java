package wherefrom.job.entry;

/**
 * A cost line; noted again under the same number, the later one counts.
 *
 * @param line counted from 1
 * @param about what it is for: a subject's key, a kind's key, or empty for the whole engine
 * @param plan the plan that it belongs to; 0 for none. It counts only while the plan stands
 */
public record CostNoted(
    int line, String what, String about, CostState state, long cents, int plan, String note)
    implements JobEntry {}
