package wherefrom.workings;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;

/** Finds what is wrong with single inputs, before any formula runs. */
final class InputCheck {
  private InputCheck() {}

  /** The first thing wrong; missing inputs are named only when the given ones are sound. */
  static Optional<WorkingAnswer> findTrouble(WorkingCard card, Inputs inputs) {
    Optional<WorkingAnswer> nonsense =
        inputs.entries().entrySet().stream()
            .sorted(Map.Entry.comparingByKey())
            .flatMap(entry -> findNonsense(card, entry.getKey(), entry.getValue()).stream())
            .<WorkingAnswer>map(found -> found)
            .findFirst();
    return nonsense.or(() -> findMissing(card, inputs));
  }

  private static Optional<WorkingAnswer> findMissing(WorkingCard card, Inputs inputs) {
    List<InputSpec> missing =
        card.inputs().stream()
            .filter(input -> input.required() && inputs.find(input.key()).isEmpty())
            .<InputSpec>map(input -> input)
            .toList();
    return missing.isEmpty() ? Optional.empty() : Optional.of(new MissingInputs(missing));
  }

  private static Optional<Nonsense> findNonsense(WorkingCard card, String key, Entry entry) {
    Optional<InputSpec> spec = card.findInput(key);
    if (spec.isEmpty()) {
      return Optional.of(new Nonsense(key, unknown(card, key)));
    }
    if (spec.get() instanceof AmountInput input) {
      return entry instanceof Entry.Figure figure
          ? findNonsense(input, figure.measured().value())
          : Optional.of(new Nonsense(key, input.words() + " takes a figure, not a word."));
    }
    ChoiceInput choice = (ChoiceInput) spec.get();
    return choice.choices().stream().anyMatch(word -> entry.equals(new Entry.Choice(word)))
        ? Optional.empty()
        : Optional.of(
            new Nonsense(key, choice.words() + " must be one of: " + words(choice) + "."));
  }

  private static String words(ChoiceInput choice) {
    return String.join(", ", choice.choices());
  }

  private static String unknown(WorkingCard card, String key) {
    String keys = card.inputs().stream().map(InputSpec::key).collect(Collectors.joining(", "));
    return card.title() + " has no input \"" + key + "\". It takes: " + keys + ".";
  }

  private static Optional<Nonsense> findNonsense(AmountInput input, Amount value) {
    if (value.dimension() != input.dimension()) {
      return Optional.of(new Nonsense(input.key(), wrongUnit(input, value)));
    }
    BigDecimal base = value.inBase();
    if (input.dimension() == Dimension.COUNT && base.stripTrailingZeros().scale() > 0) {
      return Optional.of(new Nonsense(input.key(), input.words() + " must be a whole number."));
    }
    if (input.range().isTooSmall(base)) {
      return Optional.of(new Nonsense(input.key(), tooSmall(input, value)));
    }
    if (input.range().isTooLarge(base)) {
      return Optional.of(new Nonsense(input.key(), tooLarge(input, value)));
    }
    return Optional.empty();
  }

  private static String wrongUnit(AmountInput input, Amount value) {
    String units =
        Unit.listOf(input.dimension()).stream()
            .map(Unit::symbol)
            .filter(symbol -> !symbol.isEmpty())
            .collect(Collectors.joining(", "));
    String advice = units.isEmpty() ? "" : ": give it in " + units;
    return input.words()
        + " is "
        + input.dimension().words()
        + advice
        + "; it was given as "
        + value.text()
        + ".";
  }

  private static String tooSmall(AmountInput input, Amount value) {
    Range range = input.range();
    return input.words()
        + (range.leastItself() ? " must be at least " : " must be more than ")
        + bound(range.least(), input.dimension())
        + "; it was given as "
        + value.text()
        + ". "
        + input.meaning();
  }

  private static String tooLarge(AmountInput input, Amount value) {
    return input.words()
        + " cannot be more than "
        + bound(input.range().most(), input.dimension())
        + "; it was given as "
        + value.text()
        + ". Check the figure and its unit.";
  }

  private static String bound(BigDecimal base, Dimension dimension) {
    if (base.signum() == 0) {
      return "0";
    }
    Unit unit = UnitSystem.METRIC.unit(dimension);
    BigDecimal size =
        base.multiply(unit.denominator()).divide(unit.numerator()).stripTrailingZeros();
    return new Amount(size.setScale(Math.max(0, size.scale())), unit).text();
  }
}
