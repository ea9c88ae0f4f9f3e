package wherefrom.job.entry;

/** A missing part has turned up. */
public record PartFound(int item) implements JobEntry {}
