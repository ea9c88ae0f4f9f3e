package wherefrom.job.entry;

/**
 * The engine was stopped while it ran in.
 *
 * @param words what was seen or heard; may be empty
 * @param seconds how long it ran since it was begun or taken up, 0 or more: up to the press of the
 *     key, or as the person says where the clock ran on
 */
public record RunInStopped(RunInEnd why, String words, int seconds) implements JobEntry {}
