package wherefrom.quantity;

/** What an {@link Amount} measures. Each dimension has one coherent base unit. */
public enum Dimension {
  /** A pure number, such as a ratio. */
  NUMBER("a plain number"),
  /** A whole number of things. */
  COUNT("a whole number"),
  /** Base unit: millimetre. */
  LENGTH("a length"),
  /** Base unit: square millimetre. A volume per depth is an area, too. */
  AREA("an area, or a volume per depth"),
  /** Base unit: cubic millimetre. */
  VOLUME("a volume"),
  /** Base unit: degree. */
  ANGLE("an angle"),
  /** Base unit: newton. */
  FORCE("a force"),
  /** Base unit: newton millimetre. */
  TORQUE("a torque"),
  /** Base unit: newton per millimetre. */
  SPRING_RATE("a spring rate"),
  /** Base unit: gram. */
  MASS("a weight"),
  /** Base unit: megapascal, which is a newton per square millimetre. */
  STRESS("a modulus or a pressure"),
  /** Base unit: revolution per minute. */
  SPEED("a speed of an engine"),
  /** Base unit: degree Celsius. What a thermometer shows, never a difference. */
  TEMPERATURE("a temperature"),
  /** Base unit: hour. */
  RUNNING_TIME("a time in hours"),
  /** Base unit: kilometre. How far a vehicle went; a length of a part is never typed in miles. */
  DISTANCE("a distance in miles or kilometers");

  private final String words;

  Dimension(String words) {
    this.words = words;
  }

  /** The dimension in words, with its article: "a length". */
  public String words() {
    return words;
  }
}
