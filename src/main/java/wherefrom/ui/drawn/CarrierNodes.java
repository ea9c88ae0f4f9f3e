package wherefrom.ui.drawn;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.Group;
import wherefrom.drawing.CarrierFigure;
import wherefrom.drawing.CarriersAsTheyAre;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.PartState;
import wherefrom.parts.Place;

/** The heads and rocker shafts of a drawing, drawn anew where one of them went or came. */
final class CarrierNodes {
  private final Group ground = new Group();
  private final Group marks = new Group();
  private Optional<Map<CarrierFigure, PartState>> off = Optional.empty();

  /** What lies under the parts. */
  Group ground() {
    return ground;
  }

  /** What lies over the parts. */
  Group marks() {
    return marks;
  }

  /** Draws them for a drawing that is new. */
  void build(Drawing drawn, Function<Place, PartState> states) {
    off = Optional.empty();
    show(drawn, states);
  }

  /** Draws them anew where one is off now that was not, or the other way round. */
  void show(Drawing drawn, Function<Place, PartState> states) {
    Map<CarrierFigure, PartState> now = CarriersAsTheyAre.off(drawn, states);
    if (off.equals(Optional.of(now))) {
      return;
    }
    off = Optional.of(now);
    CarriersAsTheyAre castings = CarriersAsTheyAre.of(drawn, now);
    ground.getChildren().setAll(ShapeNodes.of(castings.ground()));
    if (!castings.outlines().isEmpty()) {
      ground.getChildren().add(new LookNode(castings.outlines(), DrawnAs.OUT));
    }
    marks.getChildren().setAll(ShapeNodes.of(castings.marks()));
  }
}
