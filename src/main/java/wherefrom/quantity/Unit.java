package wherefrom.quantity;

import static wherefrom.quantity.Dimension.ANGLE;
import static wherefrom.quantity.Dimension.AREA;
import static wherefrom.quantity.Dimension.FORCE;
import static wherefrom.quantity.Dimension.LENGTH;
import static wherefrom.quantity.Dimension.NUMBER;
import static wherefrom.quantity.Dimension.SPRING_RATE;
import static wherefrom.quantity.Dimension.STRESS;
import static wherefrom.quantity.Dimension.TORQUE;
import static wherefrom.quantity.Dimension.VOLUME;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The units a user may type, each with its exact ratio to the base unit of its {@link Dimension}.
 * Exact by definition: inch 25.4 mm, pound 0.45359237 kg, standard gravity 9.80665 m/s² (NIST
 * Special Publication 811, appendix B; figures from memory).
 */
public enum Unit {
  ONE(NUMBER, "", 4, "1"),
  PERCENT(NUMBER, "%", 2, "0.01"),
  PIECES(Dimension.COUNT, "", 0, "1"),
  MILLIMETRE(LENGTH, "mm", 3, "1"),
  INCH(LENGTH, "in", 4, "25.4", "\"", "inch", "inches"),
  THOU(LENGTH, "thou", 1, "0.0254"),
  MICROMETRE(LENGTH, "µm", 1, "0.001", "um", "μm"),
  SQUARE_MILLIMETRE(AREA, "mm²", 1, "1", "mm2"),
  SQUARE_CENTIMETRE(AREA, "cm²", 3, "100", "cm2"),
  SQUARE_INCH(AREA, "in²", 4, "645.16", "in2", "sqin"),
  CC_PER_MILLIMETRE(AREA, "cc/mm", 3, "1000"),
  CC_PER_THOU(AREA, "cc/thou", 4, "1000", "0.0254"),
  CUBIC_CENTIMETRE(VOLUME, "cc", 2, "1000", "cm³", "cm3", "ml"),
  CUBIC_MILLIMETRE(VOLUME, "mm³", 1, "1", "mm3"),
  LITRE(VOLUME, "l", 4, "1000000", "litre", "litres"),
  CUBIC_INCH(VOLUME, "in³", 3, "16387.064", "in3", "cuin"),
  DEGREE(ANGLE, "deg", 2, "1", "°", "degrees"),
  ARC_MINUTE(ANGLE, "arcmin", 1, "1", "60"),
  NEWTON(FORCE, "N", 1, "1"),
  KILONEWTON(FORCE, "kN", 3, "1000"),
  POUND(FORCE, "lb", 1, "4.4482216152605", "lbf", "lbs"),
  KILOGRAM_FORCE(FORCE, "kgf", 2, "9.80665"),
  GRAM(Dimension.MASS, "g", 1, "1", "gram", "grams"),
  OUNCE(Dimension.MASS, "oz", 3, "28.349523125", "ounce", "ounces"),
  NEWTON_METRE(TORQUE, "N·m", 1, "1000", "nm", "n.m", "n*m"),
  POUND_FOOT(
      TORQUE,
      "lb·ft",
      1,
      "1355.8179483314004",
      "lbft",
      "lb.ft",
      "ftlb",
      "lb*ft",
      "lb-ft",
      "lbf·ft",
      "lbf.ft",
      "lbf*ft",
      "lbf-ft",
      "lbfft",
      "ft·lb",
      "ft-lb",
      "ft.lb",
      "ft*lb",
      "ft·lbf",
      "ft-lbf"),
  POUND_INCH(
      TORQUE,
      "lb·in",
      0,
      "112.9848290276167",
      "lbin",
      "lb.in",
      "inlb",
      "lb*in",
      "lb-in",
      "lbf·in",
      "lbf.in",
      "lbf*in",
      "lbf-in",
      "lbfin",
      "in·lb",
      "in-lb",
      "in.lb",
      "in*lb",
      "in·lbf",
      "in-lbf"),
  NEWTON_MILLIMETRE(TORQUE, "N·mm", 0, "1", "nmm", "n.mm"),
  NEWTON_PER_MILLIMETRE(SPRING_RATE, "N/mm", 2, "1"),
  POUND_PER_INCH(
      SPRING_RATE,
      "lb/in",
      1,
      "4.4482216152605",
      "25.4",
      "lbf/in",
      "lbs/in",
      "lb/inch",
      "lbf/inch",
      "lbs/inch"),
  MEGAPASCAL(STRESS, "MPa", 0, "1", "n/mm²", "n/mm2"),
  GIGAPASCAL(STRESS, "GPa", 2, "1000"),
  KILOPASCAL(STRESS, "kPa", 0, "0.001"),
  BAR(STRESS, "bar", 2, "0.1"),
  /** The conventional inch of mercury: 3386.389 Pa. */
  INCH_OF_MERCURY(STRESS, "inHg", 1, "0.003386389", "in-hg", "in.hg", "in hg", "\"hg"),
  PSI(STRESS, "psi", 0, "4.4482216152605", "645.16", "lbf/in²", "lbf/in2", "lb/in²", "lb/in2"),
  RPM(Dimension.SPEED, "rpm", 0, "1", "r/min", "1/min"),
  CELSIUS(Dimension.TEMPERATURE, "°C", 0, "1", "c", "degc", "deg c"),
  /** 32 °F is 0 °C: see {@link #zero()}. */
  FAHRENHEIT(Dimension.TEMPERATURE, "°F", 0, "5", "9", "f", "degf", "deg f"),
  HOUR(Dimension.RUNNING_TIME, "h", 1, "1", "hour", "hours", "hr", "hrs"),
  /** The international mile, 1609.344 m. */
  MILE(Dimension.DISTANCE, "mi", 0, "1.609344", "mile", "miles"),
  KILOMETRE(Dimension.DISTANCE, "km", 0, "1", "kilometer", "kilometers");

  private static final String GAP = "|";
  private static final BigDecimal FREEZING = BigDecimal.valueOf(32);
  private final Dimension dimension;
  private final String symbol;
  private final int decimals;
  private final BigDecimal numerator;
  private final BigDecimal denominator;
  private final String otherSpellings;

  /** The text after the numerator is the denominator where it is a number, else a spelling. */
  Unit(Dimension dimension, String symbol, int decimals, String numerator, String... more) {
    this.dimension = dimension;
    this.symbol = symbol;
    this.decimals = decimals;
    this.numerator = new BigDecimal(numerator);
    boolean divided = more.length > 0 && Character.isDigit(more[0].charAt(0));
    this.denominator = divided ? new BigDecimal(more[0]) : BigDecimal.ONE;
    List<String> spellings = Arrays.asList(more).subList(divided ? 1 : 0, more.length);
    this.otherSpellings = GAP + String.join(GAP, spellings) + GAP;
  }

  public Dimension dimension() {
    return dimension;
  }

  /** As shown after a figure; empty for plain numbers and counts. */
  public String symbol() {
    return symbol;
  }

  /** The places after the point a result is shown with where its uncertainty does not decide. */
  public int decimals() {
    return decimals;
  }

  /** One of this unit is {@code numerator / denominator} base units, exactly. */
  public BigDecimal numerator() {
    return numerator;
  }

  /** See {@link #numerator()}. */
  public BigDecimal denominator() {
    return denominator;
  }

  /** What this unit shows where the base unit shows 0; other than 0 for temperatures alone. */
  public BigDecimal zero() {
    return this == FAHRENHEIT ? FREEZING : BigDecimal.ZERO;
  }

  /** The unit written so, in any mixture of small and capital letters. */
  public static Optional<Unit> find(String text) {
    String wanted = text.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(unit -> unit.isSpelt(wanted)).findFirst();
  }

  /** The unit a dimension's base figures are in. */
  public static Unit getBase(Dimension dimension) {
    return listOf(dimension).stream()
        .filter(unit -> unit.numerator.compareTo(unit.denominator) == 0)
        .findFirst()
        .orElseThrow();
  }

  /** The units of one dimension, in the order they are offered. */
  public static List<Unit> listOf(Dimension dimension) {
    return Arrays.stream(values()).filter(unit -> unit.dimension == dimension).toList();
  }

  private boolean isSpelt(String lowerCase) {
    return !symbol.isEmpty()
        && (symbol.toLowerCase(Locale.ROOT).equals(lowerCase)
            || otherSpellings.contains(GAP + lowerCase + GAP));
  }
}
