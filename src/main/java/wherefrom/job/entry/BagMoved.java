package wherefrom.job.entry;

import wherefrom.parts.Whereabouts;

/**
 * A bag went somewhere, as a whole.
 *
 * @param to where it is from now on; {@link Whereabouts#FITTED} when all of it is used again
 * @param pieces how many were counted then; 0 where nobody counted
 * @param note why, where something stood against it; may be empty
 */
public record BagMoved(int number, Whereabouts to, int pieces, String note) implements JobEntry {}
