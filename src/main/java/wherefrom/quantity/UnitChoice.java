package wherefrom.quantity;

import java.util.List;

/**
 * The units that a figure is typed in at the bench.
 *
 * @param offered of one dimension, what is usual first; one alone is never turned
 */
public record UnitChoice(List<Unit> offered) {
  /** Of a tester that shows a share. */
  public static final UnitChoice PERCENT = new UnitChoice(List.of(Unit.PERCENT));

  /** Of a gauge on the intake manifold. */
  public static final UnitChoice VACUUM =
      new UnitChoice(List.of(Unit.INCH_OF_MERCURY, Unit.KILOPASCAL));

  public UnitChoice {
    offered = List.copyOf(offered);
  }

  /** The units of a dimension. A scale for parts shows grams, whatever the job is in. */
  public static UnitChoice of(Dimension dimension) {
    return new UnitChoice(
        switch (dimension) {
          case NUMBER -> List.of(Unit.ONE);
          case MASS -> List.of(Unit.GRAM, Unit.OUNCE);
          case FORCE -> List.of(Unit.POUND, Unit.NEWTON);
          case STRESS -> List.of(Unit.PSI, Unit.KILOPASCAL);
          case SPEED -> List.of(Unit.RPM);
          case TEMPERATURE -> List.of(Unit.FAHRENHEIT, Unit.CELSIUS);
          case RUNNING_TIME -> List.of(Unit.HOUR);
          case DISTANCE -> List.of(Unit.MILE, Unit.KILOMETRE);
          default -> List.of(Unit.INCH, Unit.MILLIMETRE);
        });
  }

  public Dimension dimension() {
    return offered.get(0).dimension();
  }

  /** The unit of a figure without one, in a job that is shown in this system. */
  public Unit usual(UnitSystem system) {
    return offered.stream()
        .filter(unit -> UnitSystem.find(unit).filter(system::equals).isPresent())
        .findFirst()
        .orElse(offered.get(0));
  }

  /** The one that stands behind it; itself where there is no other. */
  public Unit after(Unit unit) {
    return offered.get((offered.indexOf(unit) + 1) % offered.size());
  }
}
