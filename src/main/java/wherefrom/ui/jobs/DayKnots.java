package wherefrom.ui.jobs;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Point2D;
import javafx.geometry.Pos;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Shape;
import wherefrom.job.shelf.JobDay;
import wherefrom.job.shelf.Standing;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.Wire;

/**
 * The five days of a job as knots on the wire, full where nothing of the day is open; the present
 * one is a small tag with its name.
 */
final class DayKnots extends Region {
  private static final double DONE_MM = 2.2;
  private static final double OPEN_MM = 1.85;
  private static final double LINE_MM = 0.6;
  private static final double TAG_LINE_MM = 1;
  private static final double TAG_WIDE_MM = 8.8;
  private static final double TAG_HIGH_MM = 6.4;

  private final Touch touch;
  private final Standing standing;
  private final JobDay day;
  private final Wire wire;
  private final List<Shape> knots = new ArrayList<>();
  private final Circle eyelet = new Circle();
  private final FitText name;

  DayKnots(Touch touch, Standing standing) {
    this.touch = touch;
    this.standing = standing;
    this.day = standing.day();
    wire = new Wire(touch.scale());
    name = touch.fit(day.word(), Scale.SMALL_MM, Scale.SMALL_MM, true).align(Pos.CENTER);
    getChildren().add(wire);
    for (JobDay each : JobDay.values()) {
      knots.add(knot(each));
    }
    eyelet.setRadius(px(0.7));
    eyelet.getStyleClass().add("knot-done");
    getChildren().addAll(knots);
    getChildren().addAll(eyelet, name);
  }

  private double px(double mm) {
    return touch.scale().px(mm);
  }

  private Shape knot(JobDay each) {
    if (each == day) {
      double w = px(TAG_WIDE_MM);
      double h = px(TAG_HIGH_MM);
      double c = 0.3 * h;
      Polygon tag = new Polygon(c, 0, w, 0, w, h, c, h, 0, h - c, 0, c);
      tag.getStyleClass().add("knot-tag");
      tag.setStrokeWidth(px(TAG_LINE_MM));
      return tag;
    }
    boolean done = standing.isDone(each);
    Circle knot = new Circle(px(done ? DONE_MM : OPEN_MM));
    knot.getStyleClass().add(done ? "knot-done" : "knot-open");
    knot.setStrokeWidth(done ? 0 : px(LINE_MM));
    return knot;
  }

  private double upper() {
    return px(TAG_HIGH_MM + TAG_LINE_MM);
  }

  @Override
  protected double computeMinHeight(double width) {
    return upper() + name.minHeight(-1);
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected double computeMinWidth(double height) {
    return Math.max(name.minWidth(-1), JobDay.values().length * px(TAG_WIDE_MM));
  }

  @Override
  protected void layoutChildren() {
    double end = px(TAG_WIDE_MM) / 2 + px(TAG_LINE_MM);
    double step = (getWidth() - 2 * end) / (JobDay.values().length - 1);
    double y = upper() / 2;
    wire.lead(List.of(new Point2D(end, y), new Point2D(getWidth() - end, y)));
    for (int at = 0; at < knots.size(); at++) {
      double x = end + at * step;
      if (knots.get(at) instanceof Circle circle) {
        circle.setCenterX(x);
        circle.setCenterY(y);
      } else {
        knots.get(at).setLayoutX(x - px(TAG_WIDE_MM) / 2);
        knots.get(at).setLayoutY(y - px(TAG_HIGH_MM) / 2);
        eyelet.setCenterX(x - px(TAG_WIDE_MM) / 4);
        eyelet.setCenterY(y);
      }
    }
    double wide = name.leastLineWidth();
    double x = end + List.of(JobDay.values()).indexOf(day) * step - wide / 2;
    double inside = Math.max(0, Math.min(getWidth() - wide, x));
    Panes.place(name, inside, upper(), wide, name.minHeight(-1));
  }
}
