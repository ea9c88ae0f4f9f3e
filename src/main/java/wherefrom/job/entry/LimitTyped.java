package wherefrom.job.entry;

/**
 * A limit of this very engine, with manual and page. An empty end is no limit; both empty take an
 * earlier one away.
 */
public record LimitTyped(
    String plan, String result, String lower, String upper, String unit, String source)
    implements JobEntry {}
