package wherefrom.job.entry;

/**
 * A photograph of a part, or of the whole job where the item is 0; the file is named by the SHA-256
 * of its content.
 */
public record PhotoAdded(int item, String file, String caption) implements JobEntry {}
