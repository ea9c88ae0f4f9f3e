package wherefrom.rules.debris;

/** Did it reach the mains? */
public enum ReachedMains {
  /** No harmful debris was found. */
  NOTHING_FOUND("nothing harmful was found"),
  /** Not answered: only a look at the lower main shells answers it. */
  OPEN("not answered: look at the lower main shells (TM 5-3895-346-14)"),
  YES("yes: a bearing shows it"),
  NO("no: the bearings that tell are inspected and clean");

  private final String words;

  ReachedMains(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
