package wherefrom.job;

/** What is so at a place, for the drawn engine and for lists. */
public enum PlaceState {
  IN("in"),
  OUT("out"),
  WASHING("washing"),
  AT_SHOP("at the machine shop"),
  MISSING("lost"),
  FITTED("fitted"),
  OTHER_FITTED("other part fitted"),
  FITTED_BUT("fitted, but"),
  IN_BUT("in, but"),
  OPEN("open"),
  EXCUSED("left empty");

  private final String words;

  PlaceState(String words) {
    this.words = words;
  }

  /** Stands in lists and on the command line. Never changes. */
  public String words() {
    return words;
  }
}
