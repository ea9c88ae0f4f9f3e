package wherefrom.engine;

/** Intake or exhaust. */
public enum ValveSide {
  INTAKE("intake", "IN", 'I'),
  EXHAUST("exhaust", "EX", 'E');

  private final String word;
  private final String figures;
  private final char letter;

  ValveSide(String word, String figures, char letter) {
    this.word = word;
    this.figures = figures;
    this.letter = letter;
  }

  public String word() {
    return word;
  }

  /** The two letters that stand in large print: IN or EX. */
  public String figures() {
    return figures;
  }

  /** The letter of a valve order such as {@code EIIE}. */
  public char letter() {
    return letter;
  }
}
