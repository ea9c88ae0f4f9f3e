package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.workings.ResultValue;

/**
 * The ratios of the plan's columns on one scale: a line for each, a box of two standard
 * uncertainties round it; the wanted ratio as a dashed line through all.
 */
final class PlanScale extends Region {
  private static final double BOX_MM = 14;
  private static final double LINE_MM = 19;
  private static final double LEAST_MM = 18;
  private static final double[] STEPS = {0.1, 0.25, 0.5, 1, 2, 5};
  private static final int MOST_LINES = 5;

  private final Touch touch;
  private List<Optional<ResultValue>> ratios = List.of();
  private OptionalDouble wanted = OptionalDouble.empty();
  private int chosen;
  private double names;
  private double column;

  PlanScale(Touch touch) {
    this.touch = touch;
    setMouseTransparent(true);
  }

  /**
   * Shows ratios.
   *
   * @param newRatios one a column; empty where it is not known
   * @param newWanted the ratio that is aimed at
   */
  void show(List<Optional<ResultValue>> newRatios, OptionalDouble newWanted, int newChosen) {
    ratios = List.copyOf(newRatios);
    wanted = newWanted;
    chosen = newChosen;
    requestLayout();
  }

  /** Where the columns are: what is left of the first, and how wide one is, in pixels. */
  void columns(double namesWidth, double columnWidth) {
    names = namesWidth;
    column = columnWidth;
    requestLayout();
  }

  /** Whether nothing but figures stands left of the columns. */
  boolean hasRoomAtLeft() {
    return isDrawn() && wanted.isEmpty();
  }

  /** Whether any column has a ratio to draw. */
  boolean isDrawn() {
    return ratios.stream().anyMatch(Optional::isPresent);
  }

  @Override
  protected double computeMinHeight(double width) {
    return touch.scale().px(LEAST_MM);
  }

  private static double spread(ResultValue value) {
    return 2 * value.standardUncertainty();
  }

  private double least() {
    double low =
        ratios.stream()
            .flatMap(Optional::stream)
            .mapToDouble(value -> value.value() - spread(value))
            .min()
            .orElse(0);
    return Math.min(low, wanted.orElse(low));
  }

  private double most() {
    double high =
        ratios.stream()
            .flatMap(Optional::stream)
            .mapToDouble(value -> value.value() + spread(value))
            .max()
            .orElse(1);
    return Math.max(high, wanted.orElse(high));
  }

  private static double step(double span) {
    for (double step : STEPS) {
      if (span / step <= MOST_LINES) {
        return step;
      }
    }
    return Math.ceil(span / MOST_LINES);
  }

  @Override
  protected void layoutChildren() {
    List<Node> shown = new ArrayList<>();
    if (isDrawn() && getHeight() > 0) {
      double step = step(Math.max(0.2, most() - least()));
      double low = Math.floor(least() / step) * step;
      double high = Math.ceil(most() / step) * step;
      Axis axis = new Axis(low, Math.max(high, low + step), getHeight());
      lines(axis, step, shown);
      wanted.ifPresent(want -> want(axis, want, shown));
      for (int at = 0; at < ratios.size(); at++) {
        int place = at;
        ratios.get(at).ifPresent(value -> box(axis, value, place, shown));
      }
    }
    getChildren().setAll(shown);
    shown.forEach(Node::applyCss);
  }

  /** From a ratio to pixels from the top. */
  private record Axis(double low, double high, double height) {
    double y(double ratio) {
      return height * (high - ratio) / (high - low);
    }
  }

  private Line line(double fromX, double toX, double y, String style, double widthMm) {
    Line line = new Line(fromX, y, toX, y);
    line.getStyleClass().add(style);
    line.setStrokeWidth(touch.scale().px(widthMm));
    line.setManaged(false);
    return line;
  }

  private void lines(Axis axis, double step, List<Node> shown) {
    double high = letters();
    double last = Double.MAX_VALUE;
    for (double ratio = axis.low(); ratio <= axis.high() + step / 2; ratio += step) {
      double y = axis.y(ratio);
      shown.add(line(names, getWidth(), y, "plan-line", 0.25));
      boolean room = y >= high / 2 && y <= getHeight() - high / 2 && last - y >= high;
      if (room && !isWanted(ratio, axis)) {
        shown.add(label(plain(ratio, step), y, Pos.CENTER_RIGHT));
        last = y;
      }
    }
  }

  /** Whether the name of the wanted ratio stands at this height. */
  private boolean isWanted(double ratio, Axis axis) {
    return wanted.isPresent() && Math.abs(axis.y(wanted.getAsDouble()) - axis.y(ratio)) < letters();
  }

  private double letters() {
    return touch.small("0").minHeight(Double.MAX_VALUE);
  }

  private static String plain(double ratio, double step) {
    return String.format(Locale.ROOT, step == 0.25 ? "%.2f" : "%.1f", ratio);
  }

  private FitText label(String words, double y, Pos where) {
    FitText label =
        where == Pos.CENTER_LEFT
            ? touch.fit(words, Scale.SMALL_MM, Scale.SMALL_MM, true)
            : touch.small(words);
    label.align(where);
    label.setManaged(false);
    double high = label.minHeight(names);
    double top = Math.max(0, Math.min(getHeight() - high, y - high / 2));
    Panes.place(label, 0, top, names - touch.scale().px(3), high);
    return label;
  }

  private void want(Axis axis, double want, List<Node> shown) {
    double y = axis.y(want);
    shown.add(line(names, getWidth(), y, "plan-wanted", 0.7));
    shown.add(label("want " + plain(want, 1), y, Pos.CENTER_LEFT));
  }

  private String ratioStyle(int at) {
    return at == chosen ? "plan-ratio-chosen" : "plan-ratio";
  }

  private void box(Axis axis, ResultValue value, int at, List<Node> shown) {
    double middle = names + (at + 0.5) * column;
    double half = Math.min(touch.scale().px(BOX_MM), 0.6 * column) / 2;
    double top = axis.y(value.value() + spread(value));
    double high = Math.max(1, axis.y(value.value() - spread(value)) - top);
    Rectangle box = new Rectangle(middle - half, top, 2 * half, high);
    box.getStyleClass().add(at == chosen ? "plan-box-chosen" : "plan-box");
    box.setStrokeWidth(touch.scale().px(0.5));
    box.setManaged(false);
    double out = Math.min(touch.scale().px(LINE_MM), 0.8 * column) / 2;
    shown.add(box);
    shown.add(line(middle - out, middle + out, axis.y(value.value()), ratioStyle(at), 1));
  }
}
