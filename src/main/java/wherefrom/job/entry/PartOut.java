package wherefrom.job.entry;

/** A part came out of the place that its tag names. */
public record PartOut(int item) implements JobEntry {}
