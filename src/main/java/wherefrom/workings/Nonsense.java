package wherefrom.workings;

/** An input that cannot be. The sentence says what is wrong with it and what to do. */
public record Nonsense(String field, String sentence)
    implements WorkingAnswer, Evaluation, BackwardAnswer {}
