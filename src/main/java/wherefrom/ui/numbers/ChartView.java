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
import wherefrom.workings.chart.Drawing;
import wherefrom.workings.chart.Mark;
import wherefrom.workings.chart.Surface;

/** Draws a chart in all the room that it is given. */
public final class ChartView extends Region {
  private static final double PAD_MM = 3;
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
    setMinSize(scale.px(80), scale.px(60));
    setMouseTransparent(true);
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
    List<Node> nodes = new ArrayList<>();
    for (Mark mark : Drawing.of(chart, surface)) {
      Node node = node(mark);
      node.setManaged(false);
      node.setLayoutX(pad);
      node.setLayoutY(pad);
      nodes.add(node);
    }
    getChildren().setAll(nodes);
    nodes.forEach(Node::applyCss);
  }

  private Node node(Mark mark) {
    if (mark instanceof Mark.Line line) {
      return line(line);
    }
    if (mark instanceof Mark.Area area) {
      Polygon polygon = new Polygon();
      area.corners().forEach(corner -> polygon.getPoints().addAll(corner.x(), corner.y()));
      polygon.getStyleClass().add("chart-band");
      return polygon;
    }
    if (mark instanceof Mark.Dot dot && dot.odd()) {
      double half = scale.px(1.8);
      Rectangle square = new Rectangle(dot.x() - half, dot.y() - half, 2 * half, 2 * half);
      square.getStyleClass().add("chart-dot");
      return square;
    }
    if (mark instanceof Mark.Dot dot) {
      Circle circle = new Circle(dot.x(), dot.y(), scale.px(1.3));
      circle.getStyleClass().add("chart-dot");
      return circle;
    }
    return words((Mark.Words) mark);
  }

  private Node line(Mark.Line mark) {
    Line line = new Line(mark.x1(), mark.y1(), mark.x2(), mark.y2());
    line.getStyleClass().add("chart-line");
    boolean thin = mark.look() == Mark.Look.THIN || mark.look() == Mark.Look.DOTTED;
    line.setStrokeWidth(scale.px(thin ? THIN_MM : THICK_MM));
    switch (mark.look()) {
      case DASHED -> line.getStrokeDashArray().addAll(scale.px(3), scale.px(2));
      case DOTTED -> line.getStrokeDashArray().addAll(scale.px(1), scale.px(1));
      case THIN, THICK -> {}
    }
    return line;
  }

  private Node words(Mark.Words mark) {
    Text text = new Text(mark.text());
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
    text.setX(left);
    text.setY(mark.y() + capital / 2);
    return text;
  }
}
