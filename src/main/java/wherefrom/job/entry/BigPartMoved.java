package wherefrom.job.entry;

import wherefrom.parts.Whereabouts;

/**
 * A big part went somewhere.
 *
 * @param to where it is from now on
 * @param note why, where something stood against it; may be empty
 */
public record BigPartMoved(int number, Whereabouts to, String note) implements JobEntry {}
