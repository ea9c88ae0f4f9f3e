package wherefrom.ui.part;

import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import wherefrom.drawing.Sign;
import wherefrom.inspection.measure.Judgement;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.drawn.SignMark;
import wherefrom.workings.catalogue.accept.Acceptance.Ruling;

/**
 * A reading against its limits: the walls of the limits with what they allow between them, the
 * reading with its band of two standard uncertainties each way, and the mark of what it means.
 */
final class ReadingBar extends Region {
  private static final double TRACK_MM = 3;
  private static final double WALL_MM = 6.6;
  private static final double MARK_MM = 6.2;

  private static final int MOST_LINES = 2;

  /** Between the name and its value. */
  private static final double BETWEEN_MM = 3;

  /** Half the height of the band, and how far it is seen beside the mark at least. */
  private static final double BAND_MM = 0.8;

  private final Judgement judged;
  private final FitText name;
  private final FitText value;
  private final Rectangle allowed = new Rectangle();
  private final Rectangle band = new Rectangle();
  private final Line axis = new Line();
  private final Line lower = new Line();
  private final Line upper = new Line();
  private final SignMark mark;
  private final Scale scale;
  private final double line;

  ReadingBar(Touch touch, Judgement judged) {
    this.judged = judged;
    this.scale = touch.scale();
    line = 1.25 * scale.fontPx(Scale.SMALL_MM) * scale.textFactor();
    name = touch.small(judged.value().words()).within(MOST_LINES);
    value = touch.fit(told(), 4.5, 4.5, true).align(Pos.CENTER_RIGHT);
    mark = new SignMark(scale, sign(judged.decision()), scale.px(MARK_MM));
    allowed.getStyleClass().add("limit-allowed");
    band.getStyleClass().add("limit-band");
    for (Line each : new Line[] {axis, lower, upper}) {
      each.getStyleClass().add("limit-line");
    }
    axis.setStrokeWidth(scale.px(0.35));
    lower.setStrokeWidth(scale.px(1));
    upper.setStrokeWidth(scale.px(1));
    getChildren().addAll(name, value, axis, allowed, lower, upper, band, mark);
    setAccessibleText(judged.sentence());
    Panes.grow(this);
    setMaxHeight(USE_PREF_SIZE);
  }

  /** The reading, and in words what its mark means. */
  private String told() {
    return judged.value().amount().rounded(places()).text() + ", " + judged.word();
  }

  private int places() {
    return judged.value().unit().decimals();
  }

  /** The marks that the build record has for the same. */
  static Sign sign(Ruling decision) {
    return switch (decision) {
      case ACCEPT -> Sign.FITTED;
      case UNDECIDED -> Sign.OPEN;
      case REJECT -> Sign.FAILED;
    };
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  /**
   * The name stands above its value where both have no room in one line, in two lines if need be.
   */
  private boolean isNarrow(double width) {
    double needed = name.leastLineWidth() + scale.px(BETWEEN_MM) + value.prefWidth(-1);
    return width > 0 && needed > width;
  }

  private double head(double width) {
    return isNarrow(width) ? (1 + Math.min(MOST_LINES, name.leastLines(width))) * line : line;
  }

  private Optional<Double> wall(boolean high) {
    return (high ? judged.limit().upper() : judged.limit().lower())
        .map(amount -> amount.in(judged.value().unit()));
  }

  @Override
  protected double computeMinHeight(double width) {
    return head(width) + scale.px(WALL_MM) + scale.px(1);
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected double computeMinWidth(double height) {
    return value.prefWidth(-1);
  }

  /** Walls stand at a quarter and three quarters; the reading stays on the line. */
  private double x(double figure) {
    double low = wall(false).orElse(0.0);
    double high = wall(true).orElse(2 * Math.max(low, judged.value().value()));
    double span = Math.max(high - low, 1e-12);
    double share = 0.25 + 0.5 * (figure - low) / span;
    double edge = mark.prefWidth(-1) / 2 + scale.px(BAND_MM);
    return Math.max(edge, Math.min(getWidth() - edge, share * getWidth()));
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double figure = value.prefWidth(-1);
    double head = head(width);
    double beside = head > line ? width : width - figure - scale.px(BETWEEN_MM);
    Panes.place(name, 0, 0, Math.max(0, beside), Math.max(line, head - line));
    Panes.place(value, width - figure, head - line, figure, line);
    double y = head + scale.px(WALL_MM) / 2;
    axis.setStartX(0);
    axis.setEndX(width);
    axis.setStartY(y);
    axis.setEndY(y);
    walls(y);
    double reading = judged.value().value();
    double twice = 2 * judged.value().standardUncertainty();
    double half = scale.px(BAND_MM);
    band.setX(Math.min(x(reading - twice), x(reading) - mark.prefWidth(-1) / 2 - half));
    band.setWidth(
        Math.max(x(reading + twice), x(reading) + mark.prefWidth(-1) / 2 + half) - band.getX());
    band.setY(y - half);
    band.setHeight(2 * half);
    mark.autosize();
    mark.relocate(x(reading) - mark.prefWidth(-1) / 2, y - mark.prefHeight(-1) / 2);
  }

  private void walls(double y) {
    double from = wall(false).map(this::x).orElse(0.0);
    double to = wall(true).map(this::x).orElse(getWidth());
    allowed.setX(from);
    allowed.setWidth(Math.max(0, to - from));
    allowed.setY(y - scale.px(TRACK_MM) / 2);
    allowed.setHeight(scale.px(TRACK_MM));
    wall(lower, wall(false).isPresent(), from, y);
    wall(upper, wall(true).isPresent(), to, y);
  }

  private void wall(Line line, boolean stands, double x, double y) {
    line.setVisible(stands);
    line.setStartX(x);
    line.setEndX(x);
    line.setStartY(y - scale.px(WALL_MM) / 2);
    line.setEndY(y + scale.px(WALL_MM) / 2);
  }
}
