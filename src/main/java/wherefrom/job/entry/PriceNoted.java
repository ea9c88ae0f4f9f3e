package wherefrom.job.entry;

import wherefrom.rules.consequence.Article;

/**
 * What one piece of something costs, for the effect of plans.
 *
 * @param what a thing that the rules know, or one that a person named
 */
public record PriceNoted(Article what, long cents) implements JobEntry {}
