package wherefrom.job.entry;

import wherefrom.quantity.Amount;

/** The size when new of what a plan measures, with manual and page. */
public record SizeTyped(String plan, Amount size, String source) implements JobEntry {}
