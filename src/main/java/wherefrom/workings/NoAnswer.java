package wherefrom.workings;

/** No value of the unknown gives the wanted result; the sentence says what can be reached. */
public record NoAnswer(String sentence) implements BackwardAnswer {}
