package wherefrom.engine;

/** Upper is the block or rod side, lower is the cap side. */
public enum ShellHalf {
  UPPER("upper", "UP", "U"),
  LOWER("lower", "LO", "L");

  private final String word;
  private final String figures;
  private final String letter;

  ShellHalf(String word, String figures, String letter) {
    this.word = word;
    this.figures = figures;
    this.letter = letter;
  }

  public String word() {
    return word;
  }

  public String figures() {
    return figures;
  }

  public String letter() {
    return letter;
  }
}
