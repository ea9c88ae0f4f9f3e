package wherefrom.workings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.quantity.Measured;
import wherefrom.workings.maths.DoubleDouble;
import wherefrom.workings.maths.DualNumber;

/** One run of a working: check, evaluate, carry the uncertainties through. */
final class Computation {
  private Computation() {}

  static WorkingAnswer run(Working working, Inputs inputs) {
    WorkingCard card = working.card();
    return InputCheck.findTrouble(card, inputs).orElseGet(() -> evaluate(working, card, inputs));
  }

  private static WorkingAnswer evaluate(Working working, WorkingCard card, Inputs inputs) {
    List<InputSpec> figures =
        card.inputs().stream()
            .filter(input -> inputs.findMeasured(input.key()).isPresent())
            .<InputSpec>map(input -> input)
            .toList();
    Terms terms = new Terms(card, inputs, duals(figures, inputs));
    Evaluation evaluation = working.evaluate(terms);
    if (evaluation instanceof Values values) {
      return result(values.notes(Questions.of(working, terms, inputs)), figures, inputs);
    }
    return (WorkingAnswer) evaluation;
  }

  private static Map<String, DualNumber> duals(List<InputSpec> figures, Inputs inputs) {
    Map<String, DualNumber> duals = new HashMap<>();
    for (int i = 0; i < figures.size(); i++) {
      String key = figures.get(i).key();
      DoubleDouble value = DoubleDouble.of(measured(inputs, key).value().inBase());
      duals.put(key, DualNumber.ofInput(value, i, figures.size()));
    }
    return duals;
  }

  private static Result result(Values values, List<InputSpec> figures, Inputs inputs) {
    double[] uncertainties = new double[figures.size()];
    List<String> exact = new ArrayList<>();
    for (int i = 0; i < uncertainties.length; i++) {
      Measured measured = measured(inputs, figures.get(i).key());
      uncertainties[i] =
          measured.standardUncertainty().map(u -> u.inBase().doubleValue()).orElse(0.0);
      if (measured.standardUncertainty().isEmpty()) {
        exact.add(figures.get(i).words());
      }
    }
    Propagation propagation = new Propagation(figures, uncertainties);
    return new Result(
        values.figures().stream().map(propagation::carry).toList(), values.notes(), exact);
  }

  private static Measured measured(Inputs inputs, String key) {
    Optional<Measured> found = inputs.findMeasured(key);
    return found.orElseThrow(() -> new IllegalStateException(key + " was not entered"));
  }
}
