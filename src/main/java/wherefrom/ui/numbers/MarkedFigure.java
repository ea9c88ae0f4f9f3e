package wherefrom.ui.numbers;

import javafx.scene.layout.Region;
import javafx.scene.shape.Polygon;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;

/** A figure with its mark: a full triangle, under or touching; an empty one, too near to say. */
final class MarkedFigure extends Region {
  private final Scale scale;
  private final FitText figure;
  private final Polygon mark;

  /**
   * @param under whether it is under its least or touches
   */
  MarkedFigure(Scale scale, FitText figure, boolean under) {
    this.scale = scale;
    this.figure = figure;
    double side = scale.px(Scale.SMALL_MM);
    mark = new Polygon(0, 0, side, 0, side / 2, side);
    mark.getStyleClass().add(under ? "margin-under" : "margin-near");
    mark.setManaged(false);
    getChildren().setAll(figure, mark);
  }

  @Override
  protected double computeMinHeight(double width) {
    return figure.minHeight(width);
  }

  @Override
  protected double computeMinWidth(double height) {
    return figure.leastLineWidth() + scale.px(Scale.SMALL_MM + 1);
  }

  @Override
  protected void layoutChildren() {
    Panes.place(figure, 0, 0, getWidth(), getHeight());
    double side = scale.px(Scale.SMALL_MM);
    double x = getWidth() - figure.leastLineWidth() - side - scale.px(1);
    mark.relocate(Math.max(0, x), (getHeight() - side) / 2);
  }
}
