package wherefrom.job;

import wherefrom.rules.consequence.Change;

/**
 * A change that stands in the job.
 *
 * @param sequence the entry that made it
 * @param binding whether what follows from it binds; a replacement alone does so only once somebody
 *     has looked, measured or decided
 * @param about the part that it was found on; 0 where it speaks of no single part
 */
public record MadeChange(long sequence, Change change, boolean binding, int about) {}
