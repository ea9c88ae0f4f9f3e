package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import wherefrom.job.measure.SetDot;
import wherefrom.job.measure.SetPicture;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;

/** A set drawn member by member: how far each stands off, with its band; the odd ones ringed. */
final class SetPlot extends Region {
  private static final double ROOM = 1.15;

  private final double mm;
  private final List<SetDot> dots;
  private final List<FitText> names = new ArrayList<>();
  private final List<FitText> above;
  private final FitText legend;

  SetPlot(Touch touch, SetPicture picture) {
    this.mm = touch.scale().px(1);
    this.dots = picture.dots();
    String most = "+" + figure(most(dots), picture.unit());
    String from = most + " from the ";
    above =
        Stream.of(
                from + picture.middle(),
                from + picture.middle().replaceFirst(" .*", ""),
                most + " off the line",
                most)
            .map(touch::small)
            .toList();
    boolean odd = dots.stream().anyMatch(SetDot::odd);
    legend = touch.small(odd ? "square: odd one" : "");
    dots.forEach(dot -> names.add(touch.small(dot.name()).centred()));
    getStyleClass().add("row");
    setMouseTransparent(true);
    Panes.grow(this);
  }

  /** With as many places as the unit is shown with. */
  private static String figure(double value, String unit) {
    return Unit.find(unit)
        .map(known -> Amount.of(value, known).rounded(known.decimals()).text())
        .orElseGet(() -> value + " " + unit);
  }

  private static double most(List<SetDot> dots) {
    double most =
        dots.stream().mapToDouble(dot -> Math.abs(dot.away()) + dot.band()).max().orElse(0);
    return most > 0 ? most : 1;
  }

  @Override
  protected double computeMinHeight(double width) {
    return 60 * mm;
  }

  @Override
  protected void layoutChildren() {
    getChildren().clear();
    double line = names.isEmpty() ? 0 : names.get(0).minHeight(10_000);
    double top = 5 * mm + line;
    double bottom = getHeight() - line - 4 * mm;
    double middle = (top + bottom) / 2;
    double scale = (bottom - top) / 2 / (most(dots) * ROOM);
    double left = 6 * mm;
    double step = (getWidth() - 2 * left) / Math.max(1, dots.size());
    Line level = new Line(left, middle, getWidth() - left, middle);
    level.getStyleClass().add("plot-level");
    getChildren().add(level);
    for (int at = 0; at < dots.size(); at++) {
      draw(dots.get(at), left + step * (at + 0.5), middle, scale);
    }
    name(left, step, bottom + 2 * mm, line);
    head(left, line);
  }

  /** How far the top is from the level line, as far as there is room, and what a square is. */
  private void head(double left, double line) {
    double room = getWidth() - 2 * left;
    FitText first =
        above.stream()
            .filter(words -> words.prefWidth(-1) <= room)
            .findFirst()
            .orElse(above.get(above.size() - 1));
    getChildren().add(first);
    Panes.place(first, left, mm, first.prefWidth(-1), line);
    double wide = legend.prefWidth(-1);
    if (first.prefWidth(-1) + 4 * mm + wide <= room) {
      getChildren().add(legend);
      Panes.place(legend, getWidth() - left - wide, mm, wide, line);
    }
  }

  private void draw(SetDot dot, double x, double middle, double scale) {
    double y = middle - dot.away() * scale;
    double half = Math.max(mm, dot.band() * scale);
    Rectangle band = new Rectangle(x - 1.2 * mm, y - half, 2.4 * mm, 2 * half);
    band.getStyleClass().add("plot-band");
    Shape mark = dot.odd() ? new Rectangle(x - 3 * mm, y - 3 * mm, 6 * mm, 6 * mm) : circle(x, y);
    mark.getStyleClass().add(dot.odd() ? "plot-odd" : "plot-dot");
    getChildren().addAll(band, mark);
  }

  private Circle circle(double x, double y) {
    return new Circle(x, y, 1.8 * mm);
  }

  /** All names where they have room; else those of the odd ones alone. */
  private void name(double left, double step, double y, double line) {
    boolean room = names.stream().allMatch(name -> name.prefWidth(-1) + mm < step);
    double free = 0;
    for (int at = 0; at < names.size(); at++) {
      FitText name = names.get(at);
      double wide = name.prefWidth(-1);
      double x = Math.max(0, Math.min(left + step * (at + 0.5) - wide / 2, getWidth() - wide));
      if ((room || dots.get(at).odd()) && x >= free) {
        getChildren().add(name);
        Panes.place(name, x, y, wide, line);
        free = x + wide + mm;
      }
    }
  }
}
