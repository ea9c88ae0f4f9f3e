package wherefrom.quantity;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads figures as people type them: {@code 3.870in}, {@code 98,3 mm}, {@code -.025 in}. Point and
 * comma are both the decimal mark; there is no thousands mark, so {@code 1,250} is one and a
 * quarter. Fractions and powers of ten are refused with a sentence.
 */
public final class AmountText {
  private static final Pattern FIGURE =
      Pattern.compile("([+\\-\u2212\u2013]?)\\s*(\\d+(?:[.,]\\d*)?|[.,]\\d+)\\s*(.*)");
  private static final int MOST_DIGITS = 24;

  private AmountText() {}

  /** Reads a figure that must name its unit. */
  public static AmountReading read(String text) {
    return readWith(text, Optional.empty());
  }

  /** Reads a figure that stands in the given unit where it names none. */
  public static AmountReading read(String text, Unit usual) {
    return readWith(text, Optional.of(usual));
  }

  private static AmountReading readWith(String text, Optional<Unit> usual) {
    String typed = text.strip();
    if (typed.isEmpty()) {
      return refuse("Nothing was typed. Give a figure, such as 0.0015 in.");
    }
    Matcher figure = FIGURE.matcher(typed);
    if (!figure.matches()) {
      return refuse("\"" + typed + "\" does not start with a figure. Type it like 0.0015 in.");
    }
    if (figure.group(2).length() > MOST_DIGITS) {
      return refuse("\"" + typed + "\" has more digits than any gauge shows. Shorten it.");
    }
    return withUnit(typed, number(figure), figure.group(3).strip(), usual);
  }

  private static AmountReading withUnit(
      String typed, BigDecimal number, String unitText, Optional<Unit> usual) {
    Optional<Unit> unit = unitText.isEmpty() ? usual : Unit.find(unitText);
    return unit.<AmountReading>map(u -> new AmountReading.Understood(new Amount(number, u)))
        .orElseGet(() -> refuse(trouble(typed, unitText)));
  }

  private static String trouble(String typed, String rest) {
    if (rest.isEmpty()) {
      return "\"" + typed + "\" has no unit. Add in or mm, cc, deg, lb, N or another.";
    }
    if (rest.startsWith("/")) {
      return "\"" + typed + "\" is a fraction. Type it as a decimal, such as 0.875 for 7/8.";
    }
    char first = rest.charAt(0);
    if (first == '.' || first == ',' || first == '\'' || Character.isDigit(first)) {
      return "\""
          + typed
          + "\" has two decimal marks or a gap. Type one figure, with no thousands mark.";
    }
    return "\"" + rest + "\" is not a known unit. Use one of: in, mm, cc, deg, lb, N.";
  }

  private static BigDecimal number(Matcher figure) {
    String digits = figure.group(2).replace(',', '.');
    String whole = digits.startsWith(".") ? "0" + digits : digits;
    BigDecimal size = new BigDecimal(whole.endsWith(".") ? whole + "0" : whole);
    boolean minus = !figure.group(1).isEmpty() && !figure.group(1).equals("+");
    return minus ? size.negate() : size;
  }

  private static AmountReading refuse(String sentence) {
    return new AmountReading.NotUnderstood(sentence);
  }
}
