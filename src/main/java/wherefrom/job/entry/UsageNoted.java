package wherefrom.job.entry;

import wherefrom.quantity.Amount;

/**
 * How far or how long the engine has run in all since its first start.
 *
 * @param run hours or a distance, 0 or more
 * @param words may be empty
 */
public record UsageNoted(Amount run, String words) implements JobEntry {}
