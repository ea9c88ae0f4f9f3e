package wherefrom.ui.subject;

/**
 * A key among many.
 *
 * @param words what it opens
 * @param more how that stands
 */
public record Cell(String words, String more, Runnable act) {}
