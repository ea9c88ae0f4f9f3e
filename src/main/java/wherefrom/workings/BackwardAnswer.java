package wherefrom.workings;

import java.util.function.Function;

/** What solving a working backwards answers. */
public sealed interface BackwardAnswer permits Solution, NoAnswer, MissingInputs, Nonsense {

  /** What the function for its kind makes of it. */
  default <R> R match(
      Function<Solution, R> solution,
      Function<NoAnswer, R> none,
      Function<MissingInputs, R> missing,
      Function<Nonsense, R> nonsense) {
    if (this instanceof Solution one) {
      return solution.apply(one);
    }
    if (this instanceof NoAnswer one) {
      return none.apply(one);
    }
    if (this instanceof MissingInputs one) {
      return missing.apply(one);
    }
    return nonsense.apply((Nonsense) this);
  }
}
