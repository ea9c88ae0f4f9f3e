package wherefrom.ui.controls;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;

/** The keys that turn a list, with what of it is shown: beside the list, or in a row below it. */
final class PagerKeys extends Region {
  private final TouchKey back;
  private final TouchKey more;
  private final FitText range;
  private final double gap;
  private boolean across;
  private String from = "";
  private String of = "";

  PagerKeys(Touch touch, Runnable turnBack, Runnable turnOn) {
    back = touch.key("Up", turnBack);
    more = touch.key("Down", turnOn);
    range = touch.small("").centred();
    gap = touch.scale().gap();
    getChildren().setAll(back, range, more);
  }

  /** Puts the keys into a row, or one below the other. */
  void across(boolean isRow) {
    across = isRow;
    tell();
    requestLayout();
  }

  /**
   * Offers what can be done.
   *
   * @param shown such as {@code 3–5}; may be empty, and the next with it
   * @param all such as {@code of 14}
   */
  void offer(boolean canTurnBack, boolean canTurnOn, String shown, String all) {
    back.offer(canTurnBack);
    more.offer(canTurnOn);
    from = shown;
    of = all;
    tell();
    requestLayout();
  }

  private void tell() {
    range.setWords((from + (across ? " " : "\n") + of).strip());
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  /** How wide the keys are one below the other. */
  double columnWide() {
    return Math.ceil(Math.max(range.minWidth(-1), Math.max(back.minWidth(-1), more.minWidth(-1))));
  }

  /** How wide the keys are in a row. */
  double rowWide() {
    return Math.ceil(2 * Math.max(back.minWidth(-1), more.minWidth(-1)) + gap);
  }

  /** How high the keys are in a row. */
  double rowHigh() {
    return Math.ceil(Math.max(back.minHeight(-1), more.minHeight(-1)));
  }

  @Override
  protected double computeMinWidth(double height) {
    return across ? rowWide() : columnWide();
  }

  @Override
  protected double computeMinHeight(double width) {
    return across ? rowHigh() : back.minHeight(width) + gap + more.minHeight(width);
  }

  @Override
  protected void layoutChildren() {
    if (across) {
      row();
    } else {
      column();
    }
  }

  private void row() {
    double key = Math.ceil(Math.max(back.minWidth(-1), more.minWidth(-1)));
    Panes.place(back, 0, 0, key, getHeight());
    Panes.place(more, getWidth() - key, 0, key, getHeight());
    double left = back.isVisible() ? key + gap : 0;
    double free = getWidth() - left - gap - key;
    range.setVisible(range.leastLineWidth() <= free);
    Panes.place(range, left, 0, Math.max(0, free), getHeight());
  }

  /** Where not all have room the words take the place of the key that is not offered. */
  private void column() {
    double width = getWidth();
    double upper = back.minHeight(width);
    double lower = more.minHeight(width);
    double told = range.minHeight(width);
    Panes.place(back, 0, 0, width, upper);
    Panes.place(more, 0, getHeight() - lower, width, lower);
    double between = getHeight() - upper - lower - 2 * gap;
    boolean crowded = between < told;
    boolean hasUpper = !crowded || back.isVisible();
    boolean hasLower = !crowded || more.isVisible();
    double top = hasUpper ? upper + gap : 0;
    double bottom = hasLower ? getHeight() - lower - gap : getHeight();
    range.setVisible(bottom - top >= told);
    Panes.place(range, 0, top, width, told);
  }
}
