package wherefrom.ui.drawn;

import javafx.scene.layout.Region;
import wherefrom.drawing.Glass;
import wherefrom.drawing.MarkShapes;
import wherefrom.drawing.Point;
import wherefrom.drawing.Sign;
import wherefrom.ui.controls.Scale;

/** The mark of a state, as on the drawing: to stand beside words. It takes no touch. */
public final class SignMark extends Region {
  /** A mark whose letter is a least one, and the box that its eaves and handles take. */
  private static final double SIDE = 46 / Glass.UNITS_PER_MM;

  private static final double BOX = 54.0 / 46;
  private static final double WIDE_BOX = 1.9;

  /** Grows with the person's text. */
  public SignMark(Scale scale, Sign sign) {
    this(scale, sign, scale.px(SIDE) * scale.textFactor());
  }

  /**
   * @param side of the mark, in pixels; its box is a little larger
   */
  public SignMark(Scale scale, Sign sign, double side) {
    double high = side * BOX;
    double wide = sign == Sign.NEW ? side * WIDE_BOX : high;
    Glass glass = Glass.screen(scale.pixelsPerMm(), scale.textFactor());
    Point middle = new Point(wide / 2, high / 2);
    getChildren().addAll(ShapeNodes.of(MarkShapes.of(sign, middle, side, glass).shapes()));
    setMinSize(wide, high);
    setPrefSize(wide, high);
    setMaxSize(wide, high);
    setMouseTransparent(true);
  }

  @Override
  protected void layoutChildren() {
    // The shapes lie where they were drawn.
  }
}
