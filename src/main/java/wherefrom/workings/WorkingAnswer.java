package wherefrom.workings;

import java.util.function.Function;

/** What a working answers. */
public sealed interface WorkingAnswer permits Result, MissingInputs, Nonsense {

  /** What the function for its kind makes of it. */
  default <R> R match(
      Function<Result, R> result,
      Function<MissingInputs, R> missing,
      Function<Nonsense, R> nonsense) {
    if (this instanceof Result one) {
      return result.apply(one);
    }
    if (this instanceof MissingInputs one) {
      return missing.apply(one);
    }
    return nonsense.apply((Nonsense) this);
  }
}
