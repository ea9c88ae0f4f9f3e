package wherefrom.ui.drawn;

import javafx.scene.layout.Region;
import wherefrom.drawing.BigPartOutline;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.Glass;
import wherefrom.drawing.Sign;
import wherefrom.engine.Layout;
import wherefrom.parts.BigPartName;
import wherefrom.parts.Whereabouts;
import wherefrom.ui.controls.Scale;

/** A big part as an outline: solid where it is on the engine, dashed where it is off. */
public final class BigPartShape extends Region {

  /**
   * @param width in pixels; the height follows
   */
  public BigPartShape(
      Scale scale, Layout layout, BigPartName name, double width, Whereabouts where) {
    double high = BigPartOutline.HIGH * width;
    Glass glass = Glass.screen(scale.pixelsPerMm(), 1);
    getChildren()
        .add(
            new LookNode(
                BigPartOutline.of(name, layout, new Bounds(0, 0, width, high), glass),
                look(where)));
    setMinSize(width, high);
    setPrefSize(width, high);
    setMaxSize(width, high);
    setMouseTransparent(true);
  }

  private static DrawnAs look(Whereabouts where) {
    return switch (where) {
      case IN_ENGINE -> DrawnAs.IN;
      case FITTED -> DrawnAs.FITTED;
      case OUT, WASHING, AT_SHOP, LOST, RETIRED -> DrawnAs.OUT;
    };
  }

  /** The mark of where a bag or a big part is. */
  public static Sign sign(Whereabouts where) {
    return switch (where) {
      case IN_ENGINE -> Sign.IN;
      case OUT -> Sign.OUT;
      case WASHING -> Sign.WASHING;
      case AT_SHOP -> Sign.AT_SHOP;
      case LOST, RETIRED -> Sign.MISSING;
      case FITTED -> Sign.FITTED;
    };
  }

  @Override
  protected void layoutChildren() {
    // The shapes lie where they were drawn.
  }
}
