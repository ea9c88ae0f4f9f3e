package wherefrom.rules;

/**
 * Something that stands against a part in a place.
 *
 * @param verdict what is said of it
 * @param since the entry that it follows from; 0 where it has been so from the beginning. A reason
 *     that was given later settles it
 */
public record Objection(Verdict verdict, long since) {}
