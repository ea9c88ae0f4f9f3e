package wherefrom.job.entry;

/**
 * A point of service after the first start was seen to, or is open again; the last entry of a point
 * counts.
 *
 * @param point such as {@code oil}
 * @param words what was done or seen; may be empty
 * @param done false where it is to be done again
 */
public record ServiceTicked(String point, String words, boolean done) implements JobEntry {}
