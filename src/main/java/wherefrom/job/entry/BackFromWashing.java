package wherefrom.job.entry;

/** A part is back from washing, its tag on again. */
public record BackFromWashing(int item) implements JobEntry {}
