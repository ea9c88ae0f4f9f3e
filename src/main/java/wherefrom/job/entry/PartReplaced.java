package wherefrom.job.entry;

import java.util.Optional;
import wherefrom.quantity.Amount;

/**
 * A part is replaced by a new one for the same kind of place; the old one is retired.
 *
 * @param size how far the new part is from the standard size, shells "ten under" and pistons "ten
 *     over", 0 for standard; absent where nobody said
 * @param sort what it is where it is another sort than the old one, such as a roller
 */
public record PartReplaced(
    int oldItem, int newItem, String reason, Optional<Amount> size, PartSort sort)
    implements JobEntry {}
