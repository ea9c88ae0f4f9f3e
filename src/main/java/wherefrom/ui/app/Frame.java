package wherefrom.ui.app;

import javafx.scene.layout.Region;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/**
 * The places of the window: the rail, the title's row, and what the screen shows. They are where
 * they are on every screen; where the glass stands upright the rail is the last row.
 */
final class Frame extends Region {
  private static final double MARGIN_MM = 4.1;

  private final Scale scale;
  private final Rail rail;
  private final TitleRow title;
  private Region content = new Region();
  private boolean whole;

  Frame(Touch touch, Rail rail, TitleRow title) {
    this.scale = touch.scale();
    this.rail = rail;
    this.title = title;
    getChildren().setAll(content, title, rail);
  }

  /**
   * Shows a screen's contents.
   *
   * @param all whether they take the whole glass: of the rail then nothing but UNDO is left
   */
  void show(Region contents, boolean all) {
    whole = all;
    content = contents;
    title.setVisible(!all);
    // The rail lies above contents that take the whole glass: UNDO stays in its corner.
    getChildren().setAll(content, title, rail);
    requestLayout();
  }

  /** Whether the contents take the whole glass. */
  boolean isWhole() {
    return whole;
  }

  @Override
  protected void layoutChildren() {
    double margin = Math.floor(scale.px(MARGIN_MM));
    double width = getWidth() - 2 * margin;
    double height = getHeight() - 2 * margin;
    boolean upright = height > width;
    rail.stand(upright);
    double side = upright ? 0 : Math.ceil(rail.wide() + scale.gap());
    double below = upright ? Math.ceil(rail.high() + scale.gap()) : 0;
    rail.resizeRelocate(
        margin,
        upright ? margin + height - rail.high() : margin,
        upright ? width : rail.wide(),
        upright ? rail.high() : height);
    if (whole) {
      content.resizeRelocate(margin, margin, width, height);
      return;
    }
    double top = title.high();
    title.resizeRelocate(margin + side, margin, width - side, top);
    content.resizeRelocate(
        margin + side, margin + top, width - side, Math.max(0, height - top - below));
  }
}
