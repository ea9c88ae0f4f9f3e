package wherefrom.job.entry;

import wherefrom.rules.consequence.Change;

/**
 * A change that the person thinks of: shown with all that it means, binding nothing.
 *
 * @param plan the plan's number, counted from 1
 */
public record ChangePlanned(int plan, Change change) implements JobEntry {}
