package wherefrom.job.entry;

import wherefrom.rules.consequence.Change;

/**
 * A change was made, or something was found: what follows from it binds from now on.
 *
 * @param plan the plan that is carried out; 0 where there was none
 */
public record ChangeMade(int plan, Change change) implements JobEntry {}
