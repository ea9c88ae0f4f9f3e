package wherefrom.job.entry;

import wherefrom.rules.consequence.ChangeKind;

/**
 * A change that the person thinks of: shown with all that it means, binding nothing.
 *
 * @param plan the plan's number, counted from 1
 */
public record ChangePlanned(int plan, ChangeKind change, String where, String detail)
    implements JobEntry {}
