package wherefrom.job.entry;

/** A cost line is struck out. */
public record CostDropped(int line, String reason) implements JobEntry {}
