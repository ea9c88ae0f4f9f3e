package wherefrom.ui.app;

/**
 * Something that can be chosen from a list.
 *
 * @param words what it is
 * @param more what else to know of it; may be empty
 */
public record Choice<T>(T value, String words, String more) {}
