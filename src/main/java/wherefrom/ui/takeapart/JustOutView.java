package wherefrom.ui.takeapart;

import javafx.geometry.Pos;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.drawn.EngineView;

/** The panel of what has just come out; below it what is next, with the tag that says it is out. */
final class JustOutView extends Region {
  private static final double TAG_MM = 58.3;

  private final Touch touch;
  private final double gap;
  private final OutPanel panel;
  private final FitText next;
  private final EngineView engine;
  private final TagKey tag;
  private Region shape = new Region();

  JustOutView(Touch touch, OutPanel panel, EngineView engine, TagKey tag) {
    this.touch = touch;
    this.gap = touch.scale().gap();
    this.panel = panel;
    this.engine = engine;
    this.tag = tag;
    this.next = touch.heading("").align(Pos.CENTER_LEFT);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  /**
   * Shows the next part below the panel.
   *
   * @param words {@code Next: 4 IN rocker}
   * @param large the part, drawn
   */
  void show(String words, Region large) {
    next.setWords(words);
    shape = large;
    getChildren().setAll(panel, next, engine, shape, tag);
    requestLayout();
  }

  private boolean isStacked() {
    return getHeight() > getWidth() || touch.isLarge();
  }

  @Override
  protected double computeMinWidth(double height) {
    return Math.max(panel.minWidth(-1), tag.minWidth(-1));
  }

  @Override
  protected double computeMinHeight(double width) {
    double line = NextView.isNamedOnTag(touch) ? 0 : next.minHeight(width);
    return panel.minHeight(width) + line + tag.minHeight(width) + gap;
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double high = panel.minHeight(width);
    panel.resizeRelocate(0, 0, width, high);
    double top = high + gap / 2;
    double line = next.minHeight(width);
    boolean named = NextView.isNamedOnTag(touch);
    next.setVisible(!named);
    next.resizeRelocate(0, top, width, line);
    top += named ? gap / 2 : line + gap / 4;
    double tagHigh =
        Math.max(touch.scale().px(Scale.PRIMARY_MM), tag.minHeight(isStacked() ? width : -1));
    double tagWide =
        isStacked() ? width : Math.max(touch.scale().px(TAG_MM), tag.minWidth(tagHigh));
    tag.resizeRelocate(width - tagWide, getHeight() - tagHigh, tagWide, tagHigh);
    double room = getHeight() - top - (isStacked() ? tagHigh + gap : 0);
    engine.resizeRelocate(0, top, isStacked() ? width : width - tagWide - gap, Math.max(0, room));
    engine.setVisible(room >= engine.minHeight(width));
    shape(width - tagWide, top, tagWide, room - tagHigh - gap);
  }

  private void shape(double x, double top, double wide, double room) {
    double side = shape.prefHeight(-1);
    shape.setVisible(!isStacked() && side <= room);
    shape.resizeRelocate(x + (wide - side) / 2, top + (room - side) / 2, side, side);
  }
}
