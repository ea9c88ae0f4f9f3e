package wherefrom.workings;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Measured;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;

/**
 * The units results are shown in: those of the system, inch or metric, that the first input of the
 * same dimension was entered in; else of the first input that belongs to either.
 */
final class ShownUnits {
  private final List<Amount> entered;
  private final Map<Dimension, Unit> found = new EnumMap<>(Dimension.class);

  ShownUnits(WorkingCard card, Inputs inputs) {
    this.entered =
        card.inputs().stream()
            .flatMap(input -> inputs.findMeasured(input.key()).stream())
            .map(Measured::value)
            .toList();
  }

  Unit get(Dimension dimension) {
    return found.computeIfAbsent(dimension, this::choose);
  }

  private Unit choose(Dimension dimension) {
    List<Amount> alike = entered.stream().filter(a -> a.dimension() == dimension).toList();
    return findSystem(alike)
        .or(() -> findSystem(entered))
        .orElse(UnitSystem.METRIC)
        .unit(dimension);
  }

  private static Optional<UnitSystem> findSystem(List<Amount> amounts) {
    return amounts.stream().flatMap(amount -> UnitSystem.find(amount.unit()).stream()).findFirst();
  }
}
