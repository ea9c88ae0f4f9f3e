package wherefrom.job.entry;

import wherefrom.inspection.Look;

/** A check that a rule asked for was done; a later answer replaces an earlier one. */
public record CheckAnswered(String check, Look look, String words) implements JobEntry {}
