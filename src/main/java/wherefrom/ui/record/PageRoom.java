package wherefrom.ui.record;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.PictureView;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Tiles;

/** A page of paper as large as the glass lets it be: the keys beside it, on upright glass below. */
final class PageRoom extends Region {
  /** How wide a page is, as a part of its height. */
  private static final double PAPER = 0.7;

  private final Scale scale;
  private final PictureView page;
  private final FitText count;
  private final Tiles keys;

  /**
   * @param count says which page it is
   * @param keys in two columns
   */
  PageRoom(Scale scale, PictureView page, FitText count, Tiles keys) {
    this.scale = scale;
    this.page = page;
    this.count = count.centred();
    this.keys = keys;
    getChildren().setAll(page, count, keys);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  /** The keys in two columns; in one where the page would be small beside two. */
  private double side(double width, double height) {
    double one = Math.max(Math.ceil(keys.minWidth(-1)), Math.ceil(count.leastLineWidth()));
    double two = Math.max(2 * Math.ceil(keys.minWidth(-1)) + Math.ceil(scale.gap()) + 2, one);
    boolean small = width - two - scale.gap() < PAPER * height;
    return small && needed(one) <= height ? one : two;
  }

  private double needed(double side) {
    return count.minHeight(side) + scale.gap() + keys.minHeight(side);
  }

  @Override
  protected double computeMinHeight(double width) {
    return needed(side(0, 0));
  }

  @Override
  protected void layoutChildren() {
    double gap = scale.gap();
    double width = getWidth();
    double height = getHeight();
    boolean upright = height > width;
    double wide = upright ? width : side(width, height);
    double high = Math.ceil(keys.minHeight(wide));
    double line = Math.ceil(count.minHeight(wide));
    double x = width - wide;
    Panes.place(keys, x, height - high, wide, high);
    Panes.place(count, x, height - high - gap - line, wide, line);
    Panes.place(
        page, 0, 0, upright ? width : x - gap, upright ? height - high - line - 2 * gap : height);
  }
}
