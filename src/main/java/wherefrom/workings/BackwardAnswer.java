package wherefrom.workings;

/** What solving a working backwards answers. */
public sealed interface BackwardAnswer permits Solution, NoAnswer, MissingInputs, Nonsense {}
