package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import wherefrom.ui.controls.Fonts;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.workings.chart.Chart;
import wherefrom.workings.chart.ChartLayout;
import wherefrom.workings.chart.ChartMark;
import wherefrom.workings.chart.Surface;

/** Draws a chart in all the room that it is given. */
public final class ChartView extends Region {
  private static final double PAD_MM = 3;

  /** Where it is lower, its words leave no room for what they are about. */
  private static final double LEAST_MM = 60;

  private static final double THIN_MM = 0.3;
  private static final double THICK_MM = 0.8;

  private final Scale scale;
  private final Chart chart;
  private final Font font;
  private final double capital;

  public ChartView(Touch touch, Chart chart) {
    this.scale = touch.scale();
    this.chart = chart;
    double factor = scale.textFactor();
    this.font = Fonts.of(scale.fontPx(Scale.SMALL_MM) * factor, false);
    this.capital = scale.px(Scale.SMALL_MM) * factor;
    getStyleClass().add("chart");
    double least = scale.px(LEAST_MM) * factor;
    setMinSize(least * 4 / 3, least);
    setMouseTransparent(true);
  }

  /** How wide the room inside its edge is. */
  private double inner() {
    return getWidth() - 2 * scale.px(PAD_MM);
  }

  /** What follows a semicolon is left out where there is no room for it. */
  private String fitted(String words) {
    String rest = words;
    while (width(rest) > inner() && rest.contains(";")) {
      rest = rest.substring(0, rest.lastIndexOf(';'));
    }
    return rest;
  }

  private double width(String words) {
    Text text = new Text(words);
    text.setFont(font);
    return text.getLayoutBounds().getWidth();
  }

  @Override
  protected void layoutChildren() {
    double pad = scale.px(PAD_MM);
    Surface surface =
        new Surface(getWidth() - 2 * pad, getHeight() - 2 * pad, capital, this::width);
    Nodes nodes = new Nodes();
    for (ChartMark mark : ChartLayout.of(chart, surface)) {
      mark.draw(nodes);
    }
    for (Node node : nodes.made) {
      node.setManaged(false);
      node.setLayoutX(pad);
      node.setLayoutY(pad);
    }
    getChildren().setAll(nodes.made);
    nodes.made.forEach(Node::applyCss);
  }

  /** Makes the nodes of marks. */
  private final class Nodes implements ChartMark.Pen<RuntimeException> {
    private final List<Node> made = new ArrayList<>();

    @Override
    public void line(ChartMark.Line line) {
      made.add(node(line));
    }

    @Override
    public void area(ChartMark.Area area) {
      Polygon polygon = new Polygon();
      area.corners().forEach(corner -> polygon.getPoints().addAll(corner.x(), corner.y()));
      polygon.getStyleClass().add("chart-band");
      made.add(polygon);
    }

    @Override
    public void dot(ChartMark.Dot dot) {
      made.add(dot.odd() ? square(dot) : circle(dot));
    }

    @Override
    public void words(ChartMark.Words words) {
      made.add(node(words));
    }
  }

  private Node square(ChartMark.Dot dot) {
    double half = scale.px(1.8);
    Rectangle square = new Rectangle(dot.x() - half, dot.y() - half, 2 * half, 2 * half);
    square.getStyleClass().add("chart-dot");
    return square;
  }

  private Node circle(ChartMark.Dot dot) {
    Circle circle = new Circle(dot.x(), dot.y(), scale.px(1.3));
    circle.getStyleClass().add("chart-dot");
    return circle;
  }

  private Node node(ChartMark.Line mark) {
    Line line = new Line(mark.x1(), mark.y1(), mark.x2(), mark.y2());
    line.getStyleClass().add("chart-line");
    boolean thin = mark.look() == ChartMark.Look.THIN || mark.look() == ChartMark.Look.DOTTED;
    line.setStrokeWidth(scale.px(thin ? THIN_MM : THICK_MM));
    switch (mark.look()) {
      case DASHED -> line.getStrokeDashArray().addAll(scale.px(3), scale.px(2));
      case DOTTED -> line.getStrokeDashArray().addAll(scale.px(1), scale.px(1));
      case THIN, THICK -> {}
    }
    return line;
  }

  private Node node(ChartMark.Words mark) {
    Text text = new Text(fitted(mark.text()));
    text.setFont(font);
    text.getStyleClass().add("ink");
    text.setTextOrigin(VPos.BASELINE);
    double width = text.getLayoutBounds().getWidth();
    double left =
        switch (mark.side()) {
          case BEGIN -> mark.x();
          case MIDDLE -> mark.x() - width / 2;
          case END -> mark.x() - width;
        };
    text.setX(Math.max(0, Math.min(left, inner() - width)));
    text.setY(mark.y() + capital / 2);
    return text;
  }
}
