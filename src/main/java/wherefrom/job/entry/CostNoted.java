package wherefrom.job.entry;

import wherefrom.rules.consequence.Article;

/**
 * A cost line; noted again under the same number, the later one counts.
 *
 * @param line counted from 1
 * @param what what it is for: a thing that rules know, or the name that a person gave it
 * @param about what it is for: a subject's key, a kind's key, or empty for the whole engine
 * @param plan the plan that it belongs to; 0 for none. It counts only while the plan stands
 */
public record CostNoted(
    int line, Article what, String about, CostState state, long cents, int plan, String note)
    implements JobEntry {}
