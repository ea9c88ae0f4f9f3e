package wherefrom.job.entry;

import wherefrom.quantity.Amount;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.size.GoodsSize;

/**
 * One of the things that came was measured and held against the size that the list asks for.
 *
 * @param size the size that the list asked for at that time; empty where it has none
 * @param reading what it measures
 * @param off the standard uncertainty of the reading
 * @param standard what a standard one measures there, or what it must measure, as typed
 * @param step how far from standard the list wants it, on the diameter; 0 where it has no steps
 * @param tolerance by how much it may differ either way
 */
public record GoodsMeasured(
    Article what,
    GoodsSize size,
    GoodsWay way,
    Amount reading,
    Amount off,
    Amount standard,
    Amount step,
    Amount tolerance)
    implements JobEntry {}
