package wherefrom.job.entry;

/**
 * A part that had lost its tag was told by what was measured on it, and the person agreed.
 *
 * @param mark the number chalked on it, or what else it went by
 * @param confidence as it was shown
 */
public record Reidentified(int item, String mark, String confidence) implements JobEntry {}
