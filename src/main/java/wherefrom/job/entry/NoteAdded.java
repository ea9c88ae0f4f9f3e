package wherefrom.job.entry;

/** A note on a part, or on the whole job where the item is 0. */
public record NoteAdded(int item, String text) implements JobEntry {}
