package wherefrom.workings;

import java.util.HashMap;
import java.util.Map;
import wherefrom.workings.maths.DualNumber;

/** Runs a working's formula again and again on plain figures in base units. */
public final class Evaluations {
  private final Working working;
  private final Terms terms;

  /** The inputs give words and units; the figures come with each run. */
  public Evaluations(Working working, Inputs inputs) {
    this.working = working;
    this.terms = new Terms(working.card(), inputs, Map.of());
  }

  public Evaluation evaluate(Map<String, Double> inBase) {
    Map<String, DualNumber> duals = new HashMap<>();
    inBase.forEach((key, figure) -> duals.put(key, DualNumber.of(figure)));
    return working.evaluate(terms.withFigures(duals));
  }
}
