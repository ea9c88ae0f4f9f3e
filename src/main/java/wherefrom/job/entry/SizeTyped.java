package wherefrom.job.entry;

/** The size when new of what a plan measures, with manual and page. */
public record SizeTyped(String plan, String figure, String unit, String source)
    implements JobEntry {}
