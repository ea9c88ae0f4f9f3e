package wherefrom.job.entry;

/**
 * Marks and casting numbers as they were found on a big part; said again, the later holds.
 *
 * @param marks in words; empty takes them away
 */
public record BigPartMarked(int number, String marks) implements JobEntry {}
