package wherefrom.job.entry;

/** Tag off, part into a numbered basket, off for washing. */
public record OffForWashing(int item, int basket) implements JobEntry {}
