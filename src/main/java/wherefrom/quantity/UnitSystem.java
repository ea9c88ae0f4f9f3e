package wherefrom.quantity;

/** The units in which a job is shown. What was entered is kept as entered. */
public enum UnitSystem {
  INCH,
  METRIC
}
