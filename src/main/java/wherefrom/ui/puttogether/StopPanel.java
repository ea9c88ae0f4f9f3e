package wherefrom.ui.puttogether;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.rules.Cue;
import wherefrom.ui.controls.CueMark;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.ScreenAnswer;
import wherefrom.ui.controls.Touch;

/** The octagon with the word STOP, and the lines that can be read from the engine. */
final class StopPanel extends Region {
  /** The octagon at its usual size; it grows and shrinks with the panel. */
  private static final double MARK_MM = 35;

  private static final double LEAST_MARK_MM = 17;
  private static final double UPRIGHT_MARK_MM = 20;

  /** The octagon's part of the panel's height and at most of its width. */
  private static final double MARK = 0.55;

  private static final double MOST_MARK = 0.17;
  private static final double PAD_MM = 4.2;

  /** The word STOP below the octagon, in the octagon's side. */
  private static final double WORD = 0.38;

  /** With smaller lines there is no small one below them. */
  private static final double COMFORT_MM = 9.6;

  private static final double LINE = 1.18;

  /** The small line below a single one, in the lines that can still be read from the engine. */
  private static final double ALONE = 0.85;

  /** What that line takes of the height at most. */
  private static final double ALONE_SHARE = 0.5;

  private final Scale scale;
  private final boolean upright;
  private final Node mark;
  private final FitText word;
  private final FitText lines;
  private final FitText small;

  /** Whether there is but one line above the small one. */
  private final boolean alone;

  /**
   * @param stop at most three lines, and a small one
   * @param upright whether the glass stands upright: the lines then have the whole width
   */
  StopPanel(Touch touch, ScreenAnswer stop, boolean upright) {
    this.scale = touch.scale();
    this.upright = upright;
    mark = CueMark.of(Cue.STOP, scale.px(MARK_MM));
    word = touch.lines(List.of("STOP")).align(upright ? Pos.CENTER_LEFT : Pos.CENTER);
    lines = touch.lines(stop.lines()).align(Pos.CENTER_LEFT);
    alone = stop.lines().size() == 1;
    small = (alone ? why(touch, stop) : touch.small(stop.small())).align(Pos.CENTER_LEFT);
    getStyleClass().add("card-stop");
    getChildren().setAll(mark, word, lines, small);
  }

  /** Below a single line there is room: why it stops can be read from the engine as well. */
  private static FitText why(Touch touch, ScreenAnswer stop) {
    double largest = COMFORT_MM * ALONE / touch.scale().textFactor();
    return touch.fit(stop.small(), largest, Scale.SMALL_MM, false);
  }

  private double pad() {
    return scale.px(PAD_MM);
  }

  /** The octagon's side in a panel of this size. */
  private double markSide(double width, double height) {
    if (upright) {
      return scale.px(UPRIGHT_MARK_MM);
    }
    double wanted = Math.min(MARK * height, MOST_MARK * width);
    return Math.max(scale.px(LEAST_MARK_MM), wanted);
  }

  /** The width of octagon and word, whichever is wider. */
  private double column(double side) {
    return upright ? side : Math.max(side, word.minWidth(-1));
  }

  private double wordHigh(double side) {
    return Math.max(WORD * side, word.minHeight(-1));
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    double column = column(markSide(0, 0));
    double words = lines.minWidth(-1) + (upright ? 2 * pad() : column + 3 * pad());
    return Math.ceil(Math.max(words, column + 4 * pad()));
  }

  @Override
  protected double computeMinHeight(double width) {
    double mark = column(upright ? markSide(width, 0) : MOST_MARK * width);
    double words = lines.minHeight(linesWidth(width, mark)) + 1.2 * pad();
    double least = markSide(0, 0);
    return Math.ceil(
        upright ? words + mark + pad() : Math.max(words, least + wordHigh(least) + pad()));
  }

  /** Upright, with the cause below lines that can still be read from the engine. */
  @Override
  protected double computePrefHeight(double width) {
    double least = minHeight(width);
    double wide = linesWidth(width, 0);
    double words = comfort(wide) + high(small, wide);
    return upright ? Math.max(least, Math.ceil(markSide(width, 0) + 2.1 * pad() + words)) : least;
  }

  private double linesWidth(double width, double mark) {
    return Math.max(1, upright ? width - 2 * pad() : width - mark - 3 * pad());
  }

  @Override
  protected void layoutChildren() {
    double side = markSide(getWidth(), getHeight());
    double column = column(side);
    double wide = linesWidth(getWidth(), column);
    if (upright) {
      put(side, pad(), pad());
      Panes.place(word, side + 2 * pad(), pad(), getWidth() - side - 3 * pad(), side);
      words(pad(), side + 1.5 * pad(), wide, getHeight() - side - 2.1 * pad());
      return;
    }
    double high = wordHigh(side);
    double shrunk = Math.min(side, getHeight() - high - pad());
    double top = (getHeight() - shrunk - high) / 2;
    put(shrunk, pad() + (column - shrunk) / 2, top);
    Panes.place(word, pad(), top + shrunk, column, high);
    words(column + 2 * pad(), 0.6 * pad(), wide, getHeight() - 1.2 * pad());
  }

  /** The octagon is drawn once, at its usual size. */
  private void put(double side, double x, double y) {
    double usual = scale.px(MARK_MM);
    mark.setScaleX(side / usual);
    mark.setScaleY(side / usual);
    double aside = (usual - side) / 2;
    mark.relocate(x - aside, y - aside);
  }

  /** The small line says why, and has room only where it leaves the large ones theirs. */
  private void words(double left, double top, double wide, double high) {
    double cause = high(small, wide);
    double why = comfort(wide) + cause <= high ? cause : 0;
    small.setVisible(why > 0);
    if (alone && why > 0) {
      why = Math.max(why, Math.min(ALONE_SHARE * high, small.prefHeight(wide)));
    }
    Panes.place(lines, left, top, wide, high - why);
    Panes.place(small, left, top + high - why, wide, why);
  }

  private static double high(FitText text, double wide) {
    return text.words().isEmpty() ? 0 : text.minHeight(wide);
  }

  private double comfort(double wide) {
    double line = LINE * scale.fontPx(COMFORT_MM);
    long count = lines.words().lines().count();
    return Math.max(lines.minHeight(wide), Math.min(lines.prefHeight(wide), count * line));
  }
}
