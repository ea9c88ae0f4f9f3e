package wherefrom.job.entry;

/** What a tool showed at zero, or on its setting standard as the difference to it. */
public record ZeroChecked(String tool, String figure, String unit) implements JobEntry {}
