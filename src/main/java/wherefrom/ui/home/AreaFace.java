package wherefrom.ui.home;

import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/** What stands on the key of an area: its sign, its name, what is open, a bar of how far it is. */
final class AreaFace extends Region {
  private static final double SIGN_MM = 7.5;
  private static final double BAR_MM = 1.7;
  private static final double GAP_MM = 2.4;

  private final Touch touch;
  private final Region sign;
  private final FitText name;
  private final FitText line;
  private final String plain;
  private final String counted;
  private final Region bar = new Region();
  private final Region filled = new Region();
  private final double done;
  private boolean signed = true;

  AreaFace(Touch touch, BetweenModel.Area area) {
    this.touch = touch;
    sign = area.kind().sign().of(touch.scale().px(SIGN_MM));
    name =
        touch.fit(
            touch.brief(area.kind().word(), area.kind().brief()),
            Scale.WORKING_MM,
            Scale.SMALL_MM,
            true);
    name.align(Pos.CENTER_LEFT).within(1);
    plain = name.words();
    counted = area.open() > 0 ? plain + ": " + area.open() : plain;
    // A tile is narrow: the largest letters have no room for more on any glass.
    String told = touch.scale().textFactor() < 2 ? area.line() : area.brief();
    line = touch.small(touch.brief(told, area.brief())).align(Pos.CENTER_LEFT).within(1);
    done = area.done();
    bar.getStyleClass().add("done-bar");
    filled.getStyleClass().add("done-bar-done");
    getChildren().setAll(sign, name, line, bar, filled);
    setMouseTransparent(true);
  }

  private double gap() {
    return touch.scale().px(GAP_MM);
  }

  /** Whether the sign has room beside the name where the whole is so wide. */
  boolean hasRoomForSign(double width) {
    return sign.prefWidth(-1) + gap() + name.leastLineWidth() <= width;
  }

  /** Leaves the sign out, or has it again. */
  void sign(boolean shown) {
    if (shown != signed) {
      signed = shown;
      requestLayout();
    }
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return name.leastLineWidth();
  }

  @Override
  protected double computeMinHeight(double width) {
    return name.minHeight(-1);
  }

  @Override
  protected double computePrefHeight(double width) {
    double head = touch.scale().fontPx(Scale.WORKING_MM) * touch.scale().textFactor() * 1.25;
    return head + line.minHeight(-1) + gap();
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double height = getHeight();
    double low = lineHigh(width, height);
    boolean told = height >= name.minHeight(-1) + low;
    line.setVisible(told);
    // Without its line the key says how many are open.
    boolean counts = !told && name.wouldFit(counted, width, name.minHeight(-1));
    name.setWords(counts ? counted : plain);
    double room = told ? height - low : height;
    double thick = touch.scale().px(BAR_MM);
    // Words stand level with those of the key beside it, whether or not that has a bar.
    boolean roomy = told && room - thick - gap() / 2 >= name.minHeight(-1);
    bar.setVisible(roomy && done >= 0);
    filled.setVisible(roomy && done > 0);
    double head = roomy ? room - thick - gap() / 2 : room;
    head(width, head);
    Panes.place(line, 0, head, width, low);
    Panes.place(bar, 0, height - thick, width, thick);
    Panes.place(filled, 0, height - thick, Math.max(0, done) * width, thick);
  }

  /** Words too long for one line have two where the key is high enough. */
  private double lineHigh(double width, double height) {
    line.within(2);
    double two = line.minHeight(-1);
    boolean both = line.leastLines(width) > 1 && name.minHeight(-1) + two <= height;
    line.within(both ? 2 : 1);
    return both ? two : line.minHeight(-1);
  }

  /** The sign leaves where the name would not fit beside it. */
  private void head(double width, double height) {
    double side = sign.prefWidth(-1);
    boolean shown = signed && hasRoomForSign(width) && side <= height;
    sign.setVisible(shown);
    Panes.place(sign, 0, (height - side) / 2, side, side);
    double x = shown ? side + gap() : 0;
    Panes.place(name, x, 0, width - x, height);
  }
}
