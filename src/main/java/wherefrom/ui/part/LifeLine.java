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
  private static final double TAG_WIDE = 1.25;
  private static final double SPACE_MM = 2.5;
  private static final int MOST_LINES = 3;
  private static final double FURTHER_LINE = 0.8;
  private static final double MOST_STRETCH = 1.8;

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
    FitText words = touch.fit(event.words(), Scale.SMALL_MM, Scale.SMALL_MM, last);
    words.within(MOST_LINES);
    getChildren().addAll(knot, day, words);
    return new Row(knot, day, words);
  }

  @Override
  protected double computeMinHeight(double width) {
    return width <= 0 || rows.isEmpty() ? line : high(rows.get(rows.size() - 1), width);
  }

  @Override
  protected double computePrefHeight(double width) {
    return events.size() * line;
  }

  /** What is told of an event in several lines takes as much more of the wire. */
  private double high(Row row, double width) {
    int lines = Math.min(MOST_LINES, row.words().leastLines(wordsWide(row, width)));
    return (1 + FURTHER_LINE * (lines - 1)) * line;
  }

  private double dayWide(Row row) {
    return Math.max(touch.scale().px(DAY_MM), row.day().prefWidth(-1));
  }

  /** Where the days stand: behind the tag, which large letters make wider. */
  private double dayLeft() {
    return Math.max(touch.scale().px(WORDS_MM), tagWide() + touch.scale().px(SPACE_MM));
  }

  private double tagWide() {
    return TAG_WIDE * TAG_HIGH * line;
  }

  private double wordsLeft(Row row) {
    return dayLeft() + dayWide(row) + touch.scale().px(SPACE_MM);
  }

  private double wordsWide(Row row, double width) {
    return Math.max(0, width - wordsLeft(row));
  }

  /** The last events that find room. */
  private int first() {
    double used = 0;
    int first = rows.size();
    while (first > 0 && used + high(rows.get(first - 1), getWidth()) <= getHeight()) {
      first--;
      used += high(rows.get(first), getWidth());
    }
    return Math.min(first, Math.max(0, rows.size() - 1));
  }

  @Override
  protected void layoutChildren() {
    int first = first();
    double needed =
        rows.subList(first, rows.size()).stream().mapToDouble(row -> high(row, getWidth())).sum();
    double stretch = needed == 0 ? 1 : Math.max(1, Math.min(getHeight() / needed, MOST_STRETCH));
    double axis = touch.scale().px(AXIS_MM);
    double y = 0;
    double last = 0;
    for (int at = 0; at < rows.size(); at++) {
      boolean shows = at >= first;
      double high = shows ? high(rows.get(at), getWidth()) * stretch : 0;
      last = y + high / 2;
      place(rows.get(at), shows, axis, last, at == rows.size() - 1);
      y += high;
    }
    tag.setVisible(!rows.isEmpty());
    wire.lead(List.of(new Point2D(axis, 0), new Point2D(axis, Math.max(0, y))));
    double high = TAG_HIGH * line;
    Panes.place(tag, 0, last - high / 2, tagWide(), high);
  }

  private void place(Row row, boolean shows, double axis, double y, boolean last) {
    row.knot().setVisible(shows && !last);
    row.day().setVisible(shows);
    row.words().setVisible(shows);
    row.knot().setCenterX(axis);
    row.knot().setCenterY(y);
    double high = high(row, getWidth());
    Panes.place(row.day(), dayLeft(), y - line / 2, dayWide(row), line);
    Panes.place(row.words(), wordsLeft(row), y - high / 2, wordsWide(row, getWidth()), high);
  }
}
