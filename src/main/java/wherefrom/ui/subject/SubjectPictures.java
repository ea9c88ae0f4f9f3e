package wherefrom.ui.subject;

import javafx.scene.layout.Region;
import wherefrom.drawing.DrawnAs;
import wherefrom.engine.Layout;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.drawn.KindShape;
import wherefrom.ui.drawn.LevelPushrod;
import wherefrom.ui.drawn.PartShape;

/** Pictures of parts: small ones for the keys of a list, and large ones. */
public final class SubjectPictures {
  private static final double SIDE_MM = 13;
  private static final double LARGE_MM = 45;

  private SubjectPictures() {}

  /** A kind of part as it is on the job's engine. */
  public static Region of(ScreenContext context, PartKind kind) {
    return of(context, context.state().layout(), kind);
  }

  /** A kind of part as it is on an engine. */
  public static Region of(ScreenContext context, Layout layout, PartKind kind) {
    return new KindShape(context.scale(), layout, kind, side(context), DrawnAs.IN);
  }

  /** The part of a place as it lies there. */
  public static Region of(ScreenContext context, Place place) {
    return new PartShape(
        context.scale(), context.state().layout(), place, side(context), DrawnAs.IN);
  }

  /** The same large, for a screen that is about one part; a pushrod lies level. */
  public static Region large(ScreenContext context, Place place) {
    Layout layout = context.state().layout();
    double side = context.scale().px(LARGE_MM);
    if (place.kind() == PartKind.PUSHROD) {
      return new LevelPushrod(context.scale());
    }
    return PartShape.isLowerShell(place)
        ? new PartShape(context.scale(), layout, place, side, DrawnAs.IN)
        : new KindShape(context.scale(), layout, place.kind(), side, DrawnAs.IN);
  }

  private static double side(ScreenContext context) {
    return context.scale().px(SIDE_MM);
  }
}
