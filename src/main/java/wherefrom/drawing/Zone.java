package wherefrom.drawing;

/**
 * A box for a finger: at least 18 mm each way and 4 mm from the next.
 *
 * @param name the least that can be said of it, such as {@code cylinder 3} or {@code M2}
 */
public record Zone(Target target, Bounds bounds, String name) {}
