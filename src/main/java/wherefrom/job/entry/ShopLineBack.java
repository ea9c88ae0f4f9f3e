package wherefrom.job.entry;

import java.util.Optional;
import wherefrom.quantity.Amount;

/**
 * Pieces of a slip's line came back.
 *
 * @param size as measured on return
 */
public record ShopLineBack(int visit, int line, int count, Optional<Amount> size, String done)
    implements JobEntry {}
