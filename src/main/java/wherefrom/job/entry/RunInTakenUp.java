package wherefrom.job.entry;

/**
 * The engine runs again after a stop, and the minutes add up.
 *
 * @param words what was put right; empty where nothing was wrong
 */
public record RunInTakenUp(String words) implements JobEntry {}
