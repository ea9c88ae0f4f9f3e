package wherefrom.job.entry;

import wherefrom.quantity.Amount;

/**
 * A gauge was read while the engine ran in; the minute is that of the entry.
 *
 * @param reading of the gauge's dimension
 */
public record RunInNoted(RunInGauge gauge, Amount reading) implements JobEntry {}
