package wherefrom.job.entry;

import wherefrom.quantity.Amount;

/**
 * After how many hours or how far a point of service is due in this engine.
 *
 * @param point such as {@code oil-again}
 * @param after counted from the first start
 * @param source where the figure comes from
 */
public record ServiceDueTyped(String point, Amount after, String source) implements JobEntry {}
