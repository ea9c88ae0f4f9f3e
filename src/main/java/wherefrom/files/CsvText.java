package wherefrom.files;

import java.util.regex.Pattern;

/**
 * Cells that a spreadsheet would take for a formula, kept as text: an apostrophe stands in front,
 * as a person would type it (OWASP, CSV Injection). That goes for the beginning of a cell, and for
 * what follows a semicolon, at which some spreadsheets part cells. A plain number stays one.
 */
final class CsvText {
  private static final String SIGN = "[=+\\-@\uFF1D\uFF0B\uFF0D\uFF20]";
  private static final String START = "(^|;)";
  private static final Pattern FORMULA = Pattern.compile(START + "(?='*\\s*" + SIGN + ")");
  private static final Pattern MARKED = Pattern.compile(START + "'(?='*\\s*" + SIGN + ")");
  private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9.,]*");

  private CsvText() {}

  static String marked(String cell) {
    return NUMBER.matcher(cell).matches() ? cell : FORMULA.matcher(cell).replaceAll("$1'");
  }

  static String unmarked(String cell) {
    return MARKED.matcher(cell).replaceAll("$1");
  }
}
