package wherefrom.job.entry;

/** A part is replaced by a new one for the same place; the old one is retired. */
public record PartReplaced(int oldItem, int newItem, String reason) implements JobEntry {}
