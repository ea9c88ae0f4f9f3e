package wherefrom.job.entry;

import wherefrom.inspection.Look;

/**
 * A quick test was answered. The check is named by its key; a later answer to the same check
 * replaces an earlier one.
 */
public record LookRecorded(int item, String check, Look look, String note) implements JobEntry {}
