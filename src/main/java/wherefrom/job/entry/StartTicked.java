package wherefrom.job.entry;

/**
 * A point of the list before the first start was seen to, or is open again; the last entry of a
 * point counts.
 *
 * @param point such as {@code prime} or {@code rocker-3EX}
 * @param words what was used or seen, as typed; may be empty
 * @param done false where it is to be done again
 */
public record StartTicked(String point, String words, boolean done) implements JobEntry {}
