package wherefrom.job;

import java.util.function.Function;

/** What UNDO came to. */
public sealed interface Undone {

  /** What the function for its kind makes of it. */
  default <R> R match(
      Function<TookBack, R> tookBack,
      Function<Kept, R> kept,
      Function<NothingLeft, R> nothingLeft) {
    if (this instanceof TookBack one) {
      return tookBack.apply(one);
    }
    if (this instanceof Kept one) {
      return kept.apply(one);
    }
    return nothingLeft.apply((NothingLeft) this);
  }

  /** What came of it, for the person. */
  String sentence();

  /**
   * A step was taken back.
   *
   * @param step as it stood in the logbook, an act whole
   * @param words what it was, without a full stop
   */
  record TookBack(LoggedEntry step, String words) implements Undone {
    @Override
    public String sentence() {
      return "Undone: " + words + ".";
    }
  }

  /**
   * What was done last cannot be taken back, so nothing was; asked again, UNDO takes back the step
   * before it.
   *
   * @param kept what was done last
   * @param why in a sentence or two: what it was, and why it stays
   * @param before the step before it, in words without a full stop
   */
  record Kept(LoggedEntry kept, String why, String before) implements Undone {
    @Override
    public String sentence() {
      return why + " UNDO again undoes the step before: " + before + ".";
    }
  }

  /** There is no step that can be taken back. */
  record NothingLeft() implements Undone {
    @Override
    public String sentence() {
      return "There is nothing left to undo.";
    }
  }
}
