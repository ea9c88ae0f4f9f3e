package wherefrom.rules;

/**
 * A used part that a rule forbids to fit again.
 *
 * @param rule the rule's short name, such as {@code R1}
 * @param reason why, in a sentence
 * @param source where the rule comes from, or "common practice, no source"
 */
public record Ban(String rule, String reason, String source) {}
