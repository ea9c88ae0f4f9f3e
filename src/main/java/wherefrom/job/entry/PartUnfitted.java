package wherefrom.job.entry;

/** A fitted part was taken out again by hand. */
public record PartUnfitted(int item, String reason) implements JobEntry {}
