package wherefrom.job.image;

/**
 * A camera that can be opened.
 *
 * @param id what the system calls it
 * @param title what a person reads
 */
public record Camera(String id, String title) {}
