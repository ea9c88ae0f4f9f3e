package wherefrom.rules.consequence;

/** How hard a consequence binds. */
public enum Severity {
  BLOCK("block"),
  WARN("warning"),
  CHECK("check");

  private final String word;

  Severity(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
