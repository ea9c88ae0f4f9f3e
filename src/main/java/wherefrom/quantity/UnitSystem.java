package wherefrom.quantity;

import java.util.Optional;

/**
 * The units in which a job is shown. What was entered is kept as entered; results are shown in the
 * system their inputs were entered in.
 */
public enum UnitSystem {
  INCH,
  METRIC;

  /** The system a unit belongs to; cubic centimetres and degrees belong to both. */
  public static Optional<UnitSystem> find(Unit unit) {
    return switch (unit) {
      case INCH, THOU, SQUARE_INCH, CC_PER_THOU, CUBIC_INCH -> Optional.of(INCH);
      case POUND, POUND_FOOT, POUND_INCH, POUND_PER_INCH, PSI, INCH_OF_MERCURY -> Optional.of(INCH);
      case FAHRENHEIT, MILE -> Optional.of(INCH);
      case ONE, PERCENT, PIECES, DEGREE, ARC_MINUTE, CUBIC_CENTIMETRE, GRAM, OUNCE, RPM, HOUR ->
          Optional.empty();
      default -> Optional.of(METRIC);
    };
  }

  /** The unit results of one dimension are shown in. */
  public Unit unit(Dimension dimension) {
    boolean inch = this == INCH;
    return switch (dimension) {
      case NUMBER -> Unit.ONE;
      case COUNT -> Unit.PIECES;
      case LENGTH -> inch ? Unit.INCH : Unit.MILLIMETRE;
      case AREA -> inch ? Unit.CC_PER_THOU : Unit.CC_PER_MILLIMETRE;
      case VOLUME -> Unit.CUBIC_CENTIMETRE;
      case ANGLE -> Unit.DEGREE;
      case FORCE -> inch ? Unit.POUND : Unit.NEWTON;
      case MASS -> Unit.GRAM;
      case TORQUE -> inch ? Unit.POUND_FOOT : Unit.NEWTON_METRE;
      case SPRING_RATE -> inch ? Unit.POUND_PER_INCH : Unit.NEWTON_PER_MILLIMETRE;
      case STRESS -> inch ? Unit.PSI : Unit.MEGAPASCAL;
      case SPEED -> Unit.RPM;
      case TEMPERATURE -> inch ? Unit.FAHRENHEIT : Unit.CELSIUS;
      case RUNNING_TIME -> Unit.HOUR;
      case DISTANCE -> inch ? Unit.MILE : Unit.KILOMETRE;
    };
  }
}
