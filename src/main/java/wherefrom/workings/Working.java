package wherefrom.workings;

import java.util.List;

/** One calculation of the trade. */
public interface Working {
  WorkingCard card();

  /** The formula itself, on inputs that are complete and each within its range. */
  Evaluation evaluate(Terms terms);

  default String key() {
    return card().key();
  }

  /**
   * The inputs with what follows from them put in, such as the nut factor of a named lubricant.
   * Whoever works the formula, forwards or backwards, begins here.
   */
  default Inputs completed(Inputs inputs) {
    return inputs;
  }

  /** What looks like a slip in inputs that are each within their range; none of it is refused. */
  default List<Note> questions(Terms terms) {
    return List.of();
  }

  /** Checks the inputs, works the formula and carries the uncertainties through. */
  default WorkingAnswer compute(Inputs inputs) {
    return Computation.run(this, completed(inputs));
  }
}
