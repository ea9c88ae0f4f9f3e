package wherefrom.ui.part;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Point2D;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.PaperTag;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.Wire;

/** A part's life on the wire: a knot for each event, a small tag for the last. */
final class LifeLine extends Region {
  private static final double AXIS_MM = 3.4;
  private static final double KNOT_MM = 1.7;
  private static final double WORDS_MM = 10;
  private static final double DAY_MM = 22;
  private static final double TAG_HIGH = 0.55;

  private record Row(Circle knot, FitText day, FitText words) {}

  private final Touch touch;
  private final List<LifeEvent> events;
  private final List<Row> rows = new ArrayList<>();
  private final Wire wire;
  private final Region tag;
  private final double line;

  /**
   * @param events the oldest first
   */
  LifeLine(Touch touch, List<LifeEvent> events) {
    this.touch = touch;
    this.events = List.copyOf(events);
    Scale scale = touch.scale();
    wire = new Wire(scale);
    tag = new PaperTag(scale, new Region());
    line = 1.5 * scale.fontPx(Scale.SMALL_MM) * scale.textFactor();
    getChildren().addAll(wire);
    for (int at = 0; at < events.size(); at++) {
      rows.add(row(events.get(at), at == events.size() - 1));
    }
    getChildren().add(tag);
    Panes.grow(this);
  }

  private Row row(LifeEvent event, boolean last) {
    Circle knot = new Circle(touch.scale().px(KNOT_MM));
    knot.getStyleClass().add("wire-knot");
    FitText day = touch.small(event.day()).within(1);
    day.getStyleClass().add("second");
    FitText words = touch.fit(event.words(), Scale.SMALL_MM, Scale.SMALL_MM, last).within(1);
    getChildren().addAll(knot, day, words);
    return new Row(knot, day, words);
  }

  @Override
  protected double computeMinHeight(double width) {
    return line;
  }

  @Override
  protected double computePrefHeight(double width) {
    return events.size() * line;
  }

  @Override
  protected void layoutChildren() {
    int fitting = Math.max(1, (int) (getHeight() / line));
    int first = Math.max(0, rows.size() - fitting);
    int shown = rows.size() - first;
    double step = shown == 0 ? 0 : Math.min(getHeight() / shown, 1.4 * line);
    double axis = touch.scale().px(AXIS_MM);
    for (int at = 0; at < rows.size(); at++) {
      place(rows.get(at), at >= first, axis, (at - first + 0.5) * step, at == rows.size() - 1);
    }
    tag.setVisible(shown > 0);
    double end = Math.max(0, shown * step);
    wire.lead(List.of(new Point2D(axis, 0), new Point2D(axis, end)));
    double high = TAG_HIGH * line;
    tag.resizeRelocate(0, (shown - 0.5) * step - high / 2, 1.25 * high, high);
  }

  private void place(Row row, boolean shows, double axis, double y, boolean last) {
    row.knot().setVisible(shows && !last);
    row.day().setVisible(shows);
    row.words().setVisible(shows);
    row.knot().setCenterX(axis);
    row.knot().setCenterY(y);
    double left = touch.scale().px(WORDS_MM);
    double day = Math.max(touch.scale().px(DAY_MM), row.day().prefWidth(-1));
    row.day().resizeRelocate(left, y - line / 2, day, line);
    double x = left + day + touch.scale().px(1.5);
    row.words().resizeRelocate(x, y - line / 2, Math.max(0, getWidth() - x), line);
  }
}
