package wherefrom.job;

/** What is so at a place, for the drawn engine and for lists. */
public enum PlaceState {
  IN("in", "I"),
  OUT("out", "O"),
  WASHING("washing", "W"),
  AT_SHOP("at the machine shop", "S"),
  MISSING("lost", "?"),
  FITTED("fitted", "F"),
  OTHER_FITTED("other part fitted", "X"),
  FITTED_BUT("fitted, but", "!"),
  IN_BUT("in, but", "!"),
  OPEN("open", "–"),
  EXCUSED("left empty", "E");

  private final String words;
  private final String letter;

  PlaceState(String words, String letter) {
    this.words = words;
    this.letter = letter;
  }

  /** Stands in lists and on the command line. Never changes. */
  public String words() {
    return words;
  }

  /** Whether something stands against the part that sits there. */
  public boolean isAgainst() {
    return this == FITTED_BUT || this == IN_BUT;
  }

  /** The letter that stands for it on the drawn engine. */
  public String letter() {
    return letter;
  }
}
