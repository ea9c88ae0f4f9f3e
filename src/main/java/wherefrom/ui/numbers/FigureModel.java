package wherefrom.ui.numbers;

import java.util.List;
import java.util.Optional;
import wherefrom.quantity.Amount;
import wherefrom.quantity.AmountReading;
import wherefrom.quantity.AmountText;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitChoice;
import wherefrom.quantity.UnitSystem;
import wherefrom.workings.AmountInput;

/** One figure while it is typed: value, unit, sign, and how far it may be off. */
final class FigureModel {
  private static final String AT_MOST = " max";
  private static final int MOST = 12;

  private final AmountInput input;
  private final StringBuilder value = new StringBuilder();
  private final StringBuilder spread = new StringBuilder();
  private Unit unit;
  private boolean negative;
  private boolean atMost = true;
  private boolean onSpread;
  private boolean fresh = true;

  /**
   * @param text the figure as it was typed before; empty for none
   * @param units in which units the job is shown
   */
  FigureModel(AmountInput input, String text, UnitSystem units) {
    this.input = input;
    this.unit = units.unit(input.dimension());
    if (!text.isEmpty()) {
      read(text);
    }
  }

  private void read(String text) {
    String[] sides = text.split("±", 2);
    Optional<Amount> amount = amount(sides[0]);
    if (amount.isEmpty()) {
      return;
    }
    unit = amount.get().unit();
    negative = amount.get().number().signum() < 0;
    value.append(amount.get().number().abs().toPlainString());
    if (sides.length == 2) {
      atMost = sides[1].endsWith(AT_MOST);
      String off = atMost ? sides[1].substring(0, sides[1].length() - AT_MOST.length()) : sides[1];
      amount(off).ifPresent(known -> spread.append(known.to(unit).number().toPlainString()));
    }
  }

  private Optional<Amount> amount(String text) {
    return AmountText.read(text, unit) instanceof AmountReading.Understood understood
        ? Optional.of(understood.amount())
        : Optional.empty();
  }

  /** Goes on where another one of the same figure stood. */
  void goOn(FigureModel other) {
    value.replace(0, value.length(), other.value.toString());
    spread.replace(0, spread.length(), other.spread.toString());
    unit = other.unit;
    negative = other.negative;
    atMost = other.atMost;
    onSpread = other.onSpread;
    fresh = other.fresh;
  }

  AmountInput input() {
    return input;
  }

  /** The units offered; one alone needs no key. */
  static List<Unit> units(Dimension dimension) {
    return switch (dimension) {
      case NUMBER -> List.of(Unit.ONE);
      case COUNT -> List.of(Unit.PIECES);
      case LENGTH -> List.of(Unit.INCH, Unit.MILLIMETRE, Unit.THOU);
      case AREA -> List.of(Unit.CC_PER_THOU, Unit.CC_PER_MILLIMETRE, Unit.SQUARE_INCH);
      case VOLUME -> List.of(Unit.CUBIC_CENTIMETRE, Unit.CUBIC_INCH);
      case ANGLE -> List.of(Unit.DEGREE);
      case MASS -> List.of(Unit.GRAM, Unit.OUNCE);
      case FORCE -> List.of(Unit.POUND, Unit.NEWTON);
      case TORQUE -> List.of(Unit.POUND_FOOT, Unit.NEWTON_METRE, Unit.POUND_INCH);
      case SPRING_RATE -> List.of(Unit.POUND_PER_INCH, Unit.NEWTON_PER_MILLIMETRE);
      case STRESS -> List.of(Unit.PSI, Unit.MEGAPASCAL, Unit.KILOPASCAL);
      case SPEED -> List.of(Unit.RPM);
      case TEMPERATURE, RUNNING_TIME, DISTANCE -> UnitChoice.of(dimension).offered();
    };
  }

  Unit unit() {
    return unit;
  }

  /** The figures stay as they are; the unit is another. */
  void unit(Unit chosen) {
    unit = chosen;
  }

  boolean canBeNegative() {
    return input.range().least().signum() < 0;
  }

  void turnSign() {
    negative = !negative;
  }

  /** Whether ± is the most that it can be off, rather than a standard uncertainty. */
  boolean atMost() {
    return atMost;
  }

  void turnAtMost() {
    atMost = !atMost;
  }

  boolean onSpread() {
    return onSpread;
  }

  /** Types into the value, or into what it may be off. */
  void choose(boolean spreadChosen) {
    onSpread = spreadChosen;
    fresh = true;
  }

  private StringBuilder field() {
    return onSpread ? spread : value;
  }

  /** A figure or a decimal mark; the first one after a field was chosen begins it anew. */
  void type(String character) {
    String figure = character.equals(",") ? "." : character;
    if (!figure.matches("[0-9.]")) {
      if (figure.equals("-") && canBeNegative() && !onSpread) {
        turnSign();
      }
      return;
    }
    StringBuilder field = field();
    if (fresh) {
      field.setLength(0);
    }
    fresh = false;
    boolean second = figure.equals(".") && field.indexOf(".") >= 0;
    if (!second && field.length() < MOST) {
      field.append(field.isEmpty() && figure.equals(".") ? "0." : figure);
    }
  }

  void erase() {
    fresh = false;
    StringBuilder field = field();
    if (!field.isEmpty()) {
      field.setLength(field.length() - 1);
    }
  }

  /** What is typed, and its sign, stand as they do now again when it is run. */
  Runnable remember() {
    String wasValue = value.toString();
    String wasSpread = spread.toString();
    boolean wasNegative = negative;
    boolean wasFresh = fresh;
    return () -> {
      value.replace(0, value.length(), wasValue);
      spread.replace(0, spread.length(), wasSpread);
      negative = wasNegative;
      fresh = wasFresh;
    };
  }

  /** The value with its unit, as shown while it is typed. */
  String valueWords() {
    if (value.isEmpty() && !negative) {
      return unit.symbol().isEmpty() ? "not typed" : "not typed, " + unit.symbol();
    }
    return (negative ? "−" : "") + withUnit(value.isEmpty() ? "…" : value.toString());
  }

  String spreadWords() {
    return spread.isEmpty() ? "± not said" : "± " + withUnit(spread.toString());
  }

  private String withUnit(String figure) {
    return unit.symbol().isEmpty() ? figure : figure + " " + unit.symbol();
  }

  /** What is kept; empty where no figure was typed. */
  String text() {
    if (value.isEmpty()) {
      return "";
    }
    String size = (negative ? "-" : "") + withUnit(plain(value));
    return spread.isEmpty() ? size : size + "±" + withUnit(plain(spread)) + (atMost ? AT_MOST : "");
  }

  private static String plain(StringBuilder typed) {
    return typed.charAt(typed.length() - 1) == '.' ? typed + "0" : typed.toString();
  }

  /** A kept figure as shown: {@code 3.900 in ± 0.001 in at most}. */
  static String shown(String text) {
    return text.replace("±", " ± ").replace(AT_MOST, " at most").replace("-", "−");
  }
}
