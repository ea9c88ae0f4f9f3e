package wherefrom.rules;

/**
 * One line of a verdict: what it tells of, and that.
 *
 * @param label such as {@code From}; empty where the line is a short sentence
 * @param value such as {@code rod 8, lower}
 */
public record Fact(String label, String value) {

  static Fact said(String words) {
    return new Fact("", words);
  }

  /** As one line: {@code From: rod 8, lower}. */
  public String line() {
    return label.isEmpty() ? value : label + ": " + value;
  }
}
