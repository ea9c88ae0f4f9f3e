package wherefrom.ui.subject;

import javafx.scene.layout.Region;
import wherefrom.drawing.Look;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.app.Desk;
import wherefrom.ui.drawn.KindShape;
import wherefrom.ui.drawn.PartShape;

/** Small pictures for the keys of a list. */
public final class Pictures {
  private static final double SIDE_MM = 13;

  private Pictures() {}

  /** A kind of part as it is on the job's engine. */
  public static Region of(Desk desk, PartKind kind) {
    return new KindShape(desk.scale(), desk.state().layout(), kind, side(desk), Look.IN);
  }

  /** The part of a place as it lies there. */
  public static Region of(Desk desk, Place place) {
    return new PartShape(desk.scale(), desk.state().layout(), place, side(desk), Look.IN);
  }

  private static double side(Desk desk) {
    return desk.scale().px(SIDE_MM);
  }
}
