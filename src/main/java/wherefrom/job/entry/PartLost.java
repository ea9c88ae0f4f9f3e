package wherefrom.job.entry;

/** A part cannot be found. */
public record PartLost(int item, String note) implements JobEntry {}
