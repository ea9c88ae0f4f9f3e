package wherefrom.rules;

/**
 * Which verdict it is. The id stands in logbooks and never changes; the word is for people and may.
 */
public enum VerdictName {
  RIGHT_PLACE("right place"),
  WRONG_PLACE("other place", "wrong place"),
  WRONG_MATE("wrong mate"),
  WRONG_KIND("wrong kind"),
  WRONG_HALF("wrong half"),
  WRONG_END("wrong end"),
  PLACE_TAKEN("place taken"),
  ALREADY_FITTED("already fitted"),
  FITTED_BUT("fitted, but"),
  NOT_CLEARED("not cleared"),
  MUST_BE_NEW("must be new"),
  RETIRED("retired"),
  WRONG_ENGINE("other engine", "wrong engine"),
  NOT_ONE_OF_OURS("not one of ours"),
  DIGITS_DISAGREE("digits do not agree"),
  WHICH_ENGINE("which engine"),
  WHICH_TAG("which tag"),
  TYPED_CARD("typed card");

  private final String id;
  private final String word;

  VerdictName(String id) {
    this(id, id);
  }

  VerdictName(String id, String word) {
    this.id = id;
    this.word = word;
  }

  /** As it stands in logbooks. */
  public String id() {
    return id;
  }

  /** As it is shown. */
  public String word() {
    return word;
  }
}
