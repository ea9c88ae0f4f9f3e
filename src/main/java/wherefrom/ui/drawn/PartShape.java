package wherefrom.ui.drawn;

import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.Shape;
import wherefrom.engine.Layout;
import wherefrom.engine.MainSpot;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.controls.Scale;

/** The part of a place as it lies there, without letters: a lower shell lies open upward. */
public final class PartShape extends Region {

  /**
   * @param side of its square, in pixels
   * @param look such as {@link DrawnAs#HERE}: amber
   */
  public PartShape(Scale scale, Layout layout, Place place, double side, DrawnAs look) {
    List<Shape> bare =
        KindShape.shapes(scale, layout, place.kind(), side).stream()
            .filter(shape -> !(shape instanceof Shape.Words))
            .toList();
    getChildren().add(new LookNode(bare, look));
    // Not turned: its tang stays on the side where the other drawings have it.
    setScaleY(isLowerShell(place) ? -1 : 1);
    setMinSize(side, side);
    setPrefSize(side, side);
    setMaxSize(side, side);
    setMouseTransparent(true);
  }

  /** Whether it is a half shell that lies open upward. */
  public static boolean isLowerShell(Place place) {
    boolean shell = place.kind() == PartKind.ROD_SHELL || place.kind() == PartKind.MAIN_SHELL;
    ShellHalf half =
        place.spot() instanceof RodSpot rod
            ? rod.half()
            : place.spot() instanceof MainSpot main ? main.half() : ShellHalf.UPPER;
    return shell && half == ShellHalf.LOWER;
  }

  @Override
  protected void layoutChildren() {
    // The shapes lie where they were drawn.
  }
}
