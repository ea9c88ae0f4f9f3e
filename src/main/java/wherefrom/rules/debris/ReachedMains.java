package wherefrom.rules.debris;

/** Did it reach the mains? */
public enum ReachedMains {
  /** No harmful debris was found. */
  NOTHING_FOUND("nothing harmful was found", "", ""),
  /** Not answered: only a look at the lower main shells answers it. */
  OPEN("not answered", "look at the lower main shells", " (TM 5-3895-346-14)"),
  YES("yes", "a bearing shows it", ""),
  NO("no", "the bearings that tell are inspected and clean", "");

  private final String answer;
  private final String because;
  private final String source;

  ReachedMains(String answer, String because, String source) {
    this.answer = answer;
    this.because = because;
    this.source = source;
  }

  /** In a word or two. */
  public String answer() {
    return answer;
  }

  /** What it rests on, or what is still to be done; may be empty. */
  public String because() {
    return because;
  }

  /** All of it, with where it is from. */
  public String words() {
    return because.isEmpty() ? answer : answer + ": " + because + source;
  }
}
