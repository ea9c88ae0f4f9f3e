package wherefrom.workings;

/** One calculation of the trade. */
public interface Working {
  WorkingCard card();

  /** The formula itself, on inputs that are complete and each within its range. */
  Evaluation evaluate(Terms terms);

  default String key() {
    return card().key();
  }

  /** Checks the inputs, works the formula and carries the uncertainties through. */
  default WorkingAnswer compute(Inputs inputs) {
    return Computation.run(this, inputs);
  }
}
