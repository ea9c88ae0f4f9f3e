package wherefrom.engine;

/** How the banks of cylinders stand to each other. */
public enum Arrangement {
  INLINE("inline"),
  V("V"),
  OPPOSED("opposed");

  private final String word;

  Arrangement(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
