package wherefrom.ui.benchmap;

import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import wherefrom.drawing.Holder;
import wherefrom.engine.Layout;
import wherefrom.parts.PartKind;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.drawn.HolderPicture;
import wherefrom.ui.drawn.SignMark;

/**
 * A plate for a place where parts lie: the place drawn with a part where there is room, its mark,
 * how many lie there, its name, which is brief where there is no room for all of it.
 */
final class HolderKey extends Region {
  private static final double PICTURE_MM = 14.3;
  private static final double PAD_MM = 0.5;

  private final HolderPicture picture;
  private final SignMark mark;
  private final FitText count;
  private final FitText name;
  private final FitText brief;
  private final double pad;
  private final double least;

  private HolderKey(Touch touch, Layout layout, PartKind kind, Holder holder, long many) {
    Scale scale = touch.scale();
    pad = scale.px(PAD_MM);
    least = scale.px(Scale.KEY_MM);
    picture = new HolderPicture(scale, layout, kind, holder, scale.px(PICTURE_MM));
    mark = new SignMark(scale, holder.sign());
    count = touch.heading(Long.toString(many)).centred();
    name = touch.small(BenchMapModel.words(holder)).centred();
    brief = touch.small(BenchMapModel.brief(holder)).centred();
    getStyleClass().addAll("key", "plain", "holder-key");
    getChildren().addAll(picture, mark, count, name, brief);
    setAccessibleRole(AccessibleRole.BUTTON);
    setAccessibleText(many + " " + BenchMapModel.words(holder));
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  static HolderKey of(
      Touch touch, Layout layout, PartKind kind, Holder holder, long many, Runnable act) {
    return touch.target(new HolderKey(touch, layout, kind, holder, many), act);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  private double top() {
    return Math.max(mark.prefHeight(-1), count.minHeight(-1));
  }

  private double across() {
    return mark.prefWidth(-1) + 2 * pad + count.prefWidth(-1);
  }

  @Override
  protected double computeMinWidth(double height) {
    return Math.max(least, Math.max(across(), brief.minWidth(-1)) + 2 * pad);
  }

  @Override
  protected double computePrefWidth(double height) {
    return computeMinWidth(height);
  }

  @Override
  protected double computeMinHeight(double width) {
    double inner = width <= 0 ? brief.prefWidth(-1) : width - 2 * pad;
    return Math.max(least, top() + brief.minHeight(inner) + 3 * pad);
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double inner = getWidth() - 2 * pad;
    boolean whole =
        name.minWidth(-1) <= inner && top() + name.minHeight(inner) + 3 * pad <= getHeight();
    name.setVisible(whole);
    brief.setVisible(!whole);
    FitText told = whole ? name : brief;
    double words = told.minHeight(inner);
    double free = getHeight() - top() - words - 3 * pad;
    boolean drawn = free >= picture.prefHeight(-1) + 2 * pad;
    picture.setVisible(drawn);
    double high = drawn ? picture.prefHeight(-1) + 2 * pad : 0;
    double y = pad + (free - high) / 2;
    picture.autosize();
    picture.relocate((getWidth() - picture.prefWidth(-1)) / 2, y);
    y += high;
    double x = (getWidth() - across()) / 2;
    mark.autosize();
    mark.relocate(x, y + (top() - mark.prefHeight(-1)) / 2);
    double wide = count.prefWidth(-1);
    Panes.place(count, x + mark.prefWidth(-1) + 2 * pad, y, wide, top());
    Panes.place(told, pad, y + top() + pad, inner, words);
  }
}
