package wherefrom.parts;

/** Where a part is now; each has a letter and a shape on the drawn engine. */
public enum Whereabouts {
  IN_ENGINE("in the engine", "in"),
  OUT("out, on the bench", "out"),
  WASHING("off for washing", "washing"),
  AT_SHOP("at the machine shop", "at the machine shop"),
  LOST("lost", "lost"),
  FITTED("fitted", "fitted"),
  RETIRED("retired", "retired");

  private final String words;
  private final String state;

  Whereabouts(String words, String state) {
    this.words = words;
    this.state = state;
  }

  public String words() {
    return words;
  }

  /** One or two words for lists and the command line. Never changes. */
  public String state() {
    return state;
  }
}
