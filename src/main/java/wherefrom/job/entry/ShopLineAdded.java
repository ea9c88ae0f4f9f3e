package wherefrom.job.entry;

/**
 * A line of a machine-shop slip for what carries no tag, or for work with a figure.
 *
 * @param what {@code block}, {@code crankshaft}, {@code main caps}
 * @param count how many pieces go
 * @param wanted the work, with numbers
 * @param target the size wanted back, as typed; may be empty
 * @param tolerance how far from it is good, as typed; may be empty
 * @param keep true of what must not get lost
 */
public record ShopLineAdded(
    int visit,
    int line,
    String what,
    int count,
    String wanted,
    String target,
    String tolerance,
    String unit,
    boolean keep)
    implements JobEntry {}
