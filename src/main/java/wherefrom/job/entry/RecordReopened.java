package wherefrom.job.entry;

/**
 * The record of a job in service is open again: it takes every entry.
 *
 * @param why the reason, never empty
 */
public record RecordReopened(String why) implements JobEntry {}
