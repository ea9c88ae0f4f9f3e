package wherefrom.rules;

/**
 * A part that a rule forbids to fit.
 *
 * @param rule the rule's short name, such as {@code R1}
 * @param reason why, in a sentence
 * @param source where the rule comes from, or "common practice, no source"
 * @param since the entry from which on it holds
 */
public record Ban(String rule, String reason, String source, long since) {}
