package wherefrom.workings;

/** What a formula gives before uncertainties are carried through. */
public sealed interface Evaluation permits Values, MissingInputs, Nonsense {}
