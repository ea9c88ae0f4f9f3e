package wherefrom.ui.audit;

/** Something on a screen that breaks a rule of size, room or contrast. */
public record Fault(Rule rule, String what) {

  /** The rules of the window. */
  public enum Rule {
    /** A target is smaller than a gloved finger needs. */
    SIZE,
    /** Two targets stand closer than they may. */
    GAP,
    /** A target overlaps another. */
    OVERLAP,
    /** Something reaches out of the window. */
    OUTSIDE,
    /** Two targets have the same words on them. */
    TWINS,
    /** Text is smaller than can be read at arm's length. */
    SMALL_TEXT,
    /** Text does not fit what it stands on, or is cut. */
    CUT_TEXT,
    /** Text runs into other text. */
    TEXT_ON_TEXT,
    /** Text reaches into a target that it does not belong to. */
    TEXT_ON_KEY,
    /** Text does not stand out enough from what it stands on. */
    CONTRAST,
    /** A sign does not stand out enough from what it stands on. */
    SIGN,
    /** A shape that no rule of the look paints is black in either look. */
    UNPAINTED,
    /** A plate ends between two pixels: a line of it stays on the glass when it goes. */
    BETWEEN_PIXELS,
    /** The outline of a target does not stand out from what is around it. */
    OUTLINE,
    /** A page of a list leaves room that the next row would have had. */
    ROOM_BELOW,
    /** A screen reader has nothing to say of a target. */
    SILENT,
    /** Something answers to presses but was not made as a target. */
    UNMARKED,
    /** A stock control that is too small for gloved fingers. */
    STOCK_CONTROL
  }

  @Override
  public String toString() {
    return rule + ": " + what;
  }
}
