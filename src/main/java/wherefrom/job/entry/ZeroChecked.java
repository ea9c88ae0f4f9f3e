package wherefrom.job.entry;

import wherefrom.quantity.Amount;

/** What a tool showed at zero, or on its setting standard as the difference to it. */
public record ZeroChecked(String tool, Amount shown) implements JobEntry {}
