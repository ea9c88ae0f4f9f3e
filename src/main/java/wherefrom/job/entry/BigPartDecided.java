package wherefrom.job.entry;

import wherefrom.inspection.Decision;

/**
 * What becomes of a big part; said again, the later holds.
 *
 * @param reason may be empty
 */
public record BigPartDecided(int number, Decision decision, String reason) implements JobEntry {}
