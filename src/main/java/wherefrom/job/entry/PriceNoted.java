package wherefrom.job.entry;

/**
 * What one piece of something costs, for the effect of plans.
 *
 * @param what a kind's key, or the words of a thing to buy
 */
public record PriceNoted(String what, long cents) implements JobEntry {}
