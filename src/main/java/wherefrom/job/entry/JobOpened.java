package wherefrom.job.entry;

import java.util.Set;
import wherefrom.engine.Layout;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;

/**
 * A job begins. Its places get the item numbers 1, 2, 3… in the order of {@link
 * wherefrom.parts.Places#of}. The engine number tells its tags from every other job's.
 */
public record JobOpened(
    String name, int engine, Layout layout, Set<PartKind> kinds, UnitSystem units)
    implements JobEntry {
  /** A name of more letters is cut: it would fill every screen and tag. */
  public static final int MOST_LETTERS = 80;

  public JobOpened {
    name = cut(name);
    kinds = Set.copyOf(kinds);
  }

  private static String cut(String name) {
    boolean fits = name.codePointCount(0, name.length()) <= MOST_LETTERS;
    return fits ? name : name.substring(0, name.offsetByCodePoints(0, MOST_LETTERS - 1)) + "…";
  }

  @Override
  public boolean canBeTakenBack() {
    return false;
  }
}
