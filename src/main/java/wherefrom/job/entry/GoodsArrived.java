package wherefrom.job.entry;

import wherefrom.rules.consequence.Article;
import wherefrom.rules.size.GoodsSize;

/**
 * Something that was bought was counted and held against the list.
 *
 * @param size the size that the list asked for at that time
 * @param pieces how many came, 1 or more
 * @param measured the size found on one of them, as typed; empty where none was measured
 * @param right whether that is the size that was asked for; what is not, does not count
 */
public record GoodsArrived(Article what, GoodsSize size, int pieces, String measured, boolean right)
    implements JobEntry {}
