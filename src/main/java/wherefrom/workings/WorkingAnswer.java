package wherefrom.workings;

/** What a working answers. */
public sealed interface WorkingAnswer permits Result, MissingInputs, Nonsense {}
