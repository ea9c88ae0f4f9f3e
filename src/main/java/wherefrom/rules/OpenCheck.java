package wherefrom.rules;

/**
 * A check that a part waits for.
 *
 * @param key the name by which it is answered
 * @param words what it is, in a sentence's rest: {@code a check is open (R11): …}
 * @param since the entry that asked for it, or that answered it badly
 */
public record OpenCheck(String key, String words, long since) {}
