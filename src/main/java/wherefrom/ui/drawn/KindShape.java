package wherefrom.ui.drawn;

import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.Glass;
import wherefrom.drawing.KindOutline;
import wherefrom.drawing.Shape;
import wherefrom.engine.Layout;
import wherefrom.parts.PartKind;
import wherefrom.ui.controls.Scale;

/** A kind of part as it is on this engine, in a square. It takes no touch. */
public final class KindShape extends Region {
  /** In a square of fewer letters caps and shells bear none. */
  private static final double LETTERS = 1.5;

  /**
   * @param side of the square, in pixels
   * @param look such as {@link DrawnAs#IN}: solid
   */
  public KindShape(Scale scale, Layout layout, PartKind kind, double side, DrawnAs look) {
    getChildren().add(new LookNode(shapes(scale, layout, kind, side), look));
    setMinSize(side, side);
    setPrefSize(side, side);
    setMaxSize(side, side);
    setMouseTransparent(true);
  }

  @Override
  protected void layoutChildren() {
    // The shapes lie where they were drawn.
  }

  static List<Shape> shapes(Scale scale, Layout layout, PartKind kind, double side) {
    Glass glass = Glass.screen(scale.pixelsPerMm(), 1);
    List<Shape> all = KindOutline.of(kind, layout, new Bounds(0, 0, side, side), glass);
    boolean told = side >= LETTERS * glass.letter();
    return all.stream().filter(shape -> told || !(shape instanceof Shape.Words)).toList();
  }
}
