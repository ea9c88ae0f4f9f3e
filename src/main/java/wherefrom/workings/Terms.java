package wherefrom.workings;

import java.util.Map;
import java.util.Optional;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.maths.DualNumber;

/** The inputs of one evaluation: figures in base units with derivatives, and words. */
public final class Terms {
  private final Inputs inputs;
  private final ShownUnits units;
  private final Map<String, DualNumber> duals;

  Terms(WorkingCard card, Inputs inputs, Map<String, DualNumber> duals) {
    this(inputs, new ShownUnits(card, inputs), Map.copyOf(duals));
  }

  private Terms(Inputs inputs, ShownUnits units, Map<String, DualNumber> duals) {
    this.inputs = inputs;
    this.units = units;
    this.duals = duals;
  }

  /** The same words and units with other figures. */
  Terms withFigures(Map<String, DualNumber> others) {
    return new Terms(inputs, units, Map.copyOf(others));
  }

  /** The figure in the base unit of its dimension. */
  public DualNumber get(InputSpec input) {
    return find(input)
        .orElseThrow(() -> new IllegalStateException(input.key() + " was not entered"));
  }

  public Optional<DualNumber> find(InputSpec input) {
    return Optional.ofNullable(duals.get(input.key()));
  }

  public boolean has(InputSpec input) {
    return inputs.find(input.key()).isPresent();
  }

  /** The chosen word. */
  public String getChoice(ChoiceInput input) {
    return inputs
        .find(input.key())
        .map(entry -> ((Entry.Choice) entry).word())
        .orElseThrow(() -> new IllegalStateException(input.key() + " was not chosen"));
  }

  /** The figure as it was entered, for sentences. */
  public String text(InputSpec input) {
    return inputs.findMeasured(input.key()).map(m -> m.value().text()).orElse("(none)");
  }

  /** The unit to show results of one dimension in: that of the inputs, inch or metric. */
  public Unit unit(Dimension dimension) {
    return units.get(dimension);
  }

  /** The unit to show lengths in. */
  public Unit lengthUnit() {
    return unit(Dimension.LENGTH);
  }
}
