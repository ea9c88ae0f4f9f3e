package wherefrom.job.entry;

/**
 * Pieces of a slip's line came back.
 *
 * @param figure the size measured on return, as typed; may be empty
 */
public record ShopLineBack(int visit, int line, int count, String figure, String unit, String done)
    implements JobEntry {}
