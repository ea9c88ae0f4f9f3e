package wherefrom.job.entry;

import wherefrom.rules.consequence.Article;
import wherefrom.rules.size.GoodsSize;

/**
 * A number that stands on the box of a thing of the list; a thing may have several, one a supplier.
 *
 * @param size the size that the list asked for at that time; empty where it has none
 * @param number as typed or scanned
 */
public record PartNumberTyped(Article what, GoodsSize size, String number) implements JobEntry {}
