package wherefrom.ui.bags;

import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import wherefrom.job.bags.Bag;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.drawn.BigPartShape;
import wherefrom.ui.drawn.SignMark;

/** A row for a bag: it drawn with its count, what is in it, for what, where it is. */
final class BagKey extends Region {
  private static final double PAD_MM = 1.6;

  private final BagPicture picture;
  private final FitText what;
  private final FitText whose;
  private final SignMark mark;
  private final double pad;
  private final double gap;
  private final double least;

  private BagKey(Touch touch, Bag bag, String belongsTo) {
    Scale scale = touch.scale();
    pad = scale.px(PAD_MM);
    gap = scale.gap();
    least = scale.px(Scale.KEY_MM);
    picture = new BagPicture(touch, bag.filled().pieces());
    what = touch.fit(bag.filled().what(), Scale.SMALL_MM, Scale.SMALL_MM, true);
    whose = touch.small(touch.brief(whose(bag, belongsTo), "bag " + bag.number())).within(1);
    whose.getStyleClass().add("second");
    mark = new SignMark(scale, BigPartShape.sign(bag.where()));
    getStyleClass().addAll("key", "plain");
    getChildren().addAll(picture, what, whose, mark);
    setAccessibleRole(AccessibleRole.BUTTON);
    setAccessibleText(
        bag.words() + ", " + bag.filled().pieces() + ", " + whose.words() + ", " + state(bag));
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  static BagKey of(Touch touch, Bag bag, String belongsTo, Runnable act) {
    return touch.target(new BagKey(touch, bag, belongsTo), act);
  }

  private static String whose(Bag bag, String belongsTo) {
    return "bag " + bag.number() + (belongsTo.isEmpty() ? "" : ", for " + belongsTo);
  }

  private static String state(Bag bag) {
    return bag.where().words();
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  private double inner(double width) {
    double beside = picture.prefWidth(-1) + mark.prefWidth(-1) + 2 * gap + 2 * pad;
    return Math.max(1, width - beside);
  }

  private double words(double width) {
    return what.minHeight(width) + whose.minHeight(width);
  }

  @Override
  protected double computeMinWidth(double height) {
    double beside = picture.prefWidth(-1) + mark.prefWidth(-1) + 2 * gap + 2 * pad;
    return beside + what.minWidth(-1);
  }

  @Override
  protected double computeMinHeight(double width) {
    double high = width <= 0 ? 0 : words(inner(width));
    return Math.ceil(Math.max(least, Math.max(high, picture.prefHeight(-1)) + 2 * pad));
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double inner = inner(getWidth());
    double high = picture.prefHeight(-1);
    Panes.place(picture, pad, (getHeight() - high) / 2, picture.prefWidth(-1), high);
    double x = pad + picture.prefWidth(-1) + gap;
    double upper = what.minHeight(inner);
    double lower = whose.minHeight(inner);
    double y = (getHeight() - upper - lower) / 2;
    Panes.place(what, x, y, inner, upper);
    Panes.place(whose, x, y + upper, inner, lower);
    mark.autosize();
    mark.relocate(getWidth() - pad - mark.prefWidth(-1), (getHeight() - mark.prefHeight(-1)) / 2);
  }
}
