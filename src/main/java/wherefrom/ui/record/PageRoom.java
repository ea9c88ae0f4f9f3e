package wherefrom.ui.record;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.PictureView;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.TouchKey;

/**
 * A page of paper as large as the glass lets it be: what turns it, what saves and what prints it
 * stand in a narrow column beside it, on upright glass in two rows below.
 */
final class PageRoom extends Region {
  /** How wide a page is, as a part of its height. */
  private static final double PAPER = 0.72;

  /** The column takes so much of what the page leaves. */
  private static final double SHARE = 0.6;

  private final double gap;
  private final PictureView page;
  private final FitText count;
  private final TagKey print;
  private final TouchKey save;
  private final TouchKey back;
  private final TouchKey on;

  /**
   * @param count says which page it is
   * @param back turns to the page before
   * @param on turns to the next page
   */
  PageRoom(
      double gap,
      PictureView page,
      FitText count,
      TagKey print,
      TouchKey save,
      TouchKey back,
      TouchKey on) {
    this.gap = gap;
    this.page = page;
    this.count = count.centred();
    this.print = print;
    this.save = save;
    this.back = back;
    this.on = on;
    getChildren().setAll(page, count, print, save, back, on);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  private double turning() {
    return Math.ceil(Math.max(back.minWidth(-1), on.minWidth(-1)));
  }

  private double turningHigh() {
    return Math.ceil(Math.max(back.minHeight(turning()), on.minHeight(turning())));
  }

  /** The least that the column needs. */
  private double narrow() {
    double one = Math.max(count.leastLineWidth(), Math.max(print.minWidth(-1), save.minWidth(-1)));
    return Math.ceil(Math.max(2 * turning() + gap, one));
  }

  private double side(double width, double height) {
    double left = width - gap - PAPER * height;
    return Math.max(narrow(), Math.floor(SHARE * left));
  }

  private double column(double side) {
    double keys = print.minHeight(side) + save.minHeight(side) + turningHigh();
    return Math.ceil(count.minHeight(side) + keys + 3 * gap);
  }

  @Override
  protected double computeMinWidth(double height) {
    return narrow();
  }

  @Override
  protected double computeMinHeight(double width) {
    return column(narrow());
  }

  @Override
  protected void layoutChildren() {
    if (getHeight() > getWidth()) {
      upright();
    } else {
      beside();
    }
  }

  private void beside() {
    double side = side(getWidth(), getHeight());
    double x = getWidth() - side;
    double low = up(print, x, getHeight(), side);
    low = up(save, x, low, side);
    turn(x, low - turningHigh(), side);
    double line = Math.ceil(count.minHeight(side));
    Panes.place(count, x, low - turningHigh() - gap - line, side, line);
    Panes.place(page, 0, 0, x - gap, getHeight());
  }

  /** Places a key above this height; where the next ends that stands above it. */
  private double up(Region key, double x, double low, double wide) {
    double high = Math.ceil(key.minHeight(wide));
    Panes.place(key, x, low - high, wide, high);
    return low - high - gap;
  }

  private void turn(double x, double y, double wide) {
    Panes.place(back, x, y, turning(), turningHigh());
    Panes.place(on, x + wide - turning(), y, turning(), turningHigh());
  }

  /** As with a list the count stands where keys that turn leave it room, and else gives way. */
  private void upright() {
    double width = getWidth();
    double half = Math.floor((width - gap) / 2);
    double high = Math.ceil(Math.max(print.minHeight(half), save.minHeight(half)));
    double low = getHeight() - high;
    Panes.place(print, 0, low, half, high);
    Panes.place(save, width - half, low, half, high);
    double row = low - gap - turningHigh();
    turn(0, row, width);
    double left = back.isVisible() ? turning() + gap : 0;
    double between = width - left - (on.isVisible() ? turning() + gap : 0);
    count.setVisible(count.leastLineWidth() <= between);
    Panes.place(count, left, row, between, turningHigh());
    Panes.place(page, 0, 0, width, row - gap);
  }
}
