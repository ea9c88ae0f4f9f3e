package wherefrom.workings;

import java.util.Map;
import java.util.stream.Collectors;
import wherefrom.workings.maths.Dual;

/** Runs a working's formula again and again on plain figures in base units. */
public final class Evaluations {
  private final Working working;
  private final WorkingCard card;
  private final Inputs inputs;

  /** The inputs give words and units; the figures come with each run. */
  public Evaluations(Working working, Inputs inputs) {
    this.working = working;
    this.card = working.card();
    this.inputs = inputs;
  }

  public Evaluation evaluate(Map<String, Double> inBase) {
    Map<String, Dual> duals =
        inBase.entrySet().stream()
            .collect(Collectors.toMap(Map.Entry::getKey, e -> Dual.of(e.getValue())));
    return working.evaluate(new Terms(card, inputs, duals));
  }
}
