package wherefrom.job;

import java.util.EnumSet;
import java.util.Set;

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

  private static final Set<PlaceState> PUT_BACK = EnumSet.of(FITTED, FITTED_BUT, OTHER_FITTED);

  private final String words;

  PlaceState(String words) {
    this.words = words;
  }

  /** Whether a part was put into the place since its own came out, whatever stands against it. */
  public boolean isPutBack() {
    return PUT_BACK.contains(this);
  }

  /** Stands in lists and on the command line. Never changes. */
  public String words() {
    return words;
  }
}
