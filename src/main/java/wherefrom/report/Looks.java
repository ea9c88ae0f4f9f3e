package wherefrom.report;

import java.io.IOException;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.MarkShapes;
import wherefrom.drawing.PartState;
import wherefrom.drawing.Point;
import wherefrom.drawing.Sign;
import wherefrom.inspection.Look;
import wherefrom.job.PlaceState;
import wherefrom.job.pages.RecordEngine;
import wherefrom.parts.Place;
import wherefrom.pdf.Book;
import wherefrom.pdf.PaperPage;

/** How states and answers look on paper. */
final class Looks {
  private static final Set<Sign> PLAIN = EnumSet.of(Sign.IN, Sign.OUT, Sign.FITTED);

  private Looks() {}

  /** As the engine is drawn; a new part in its place is marked as such, and one that failed. */
  static PartState of(RecordEngine engine, Place place) {
    PlaceState state = engine.state(place);
    PartState plain = of(state);
    if (engine.failed().contains(place) && PLAIN.contains(plain.sign())) {
      return plain.failed();
    }
    boolean fitted = state == PlaceState.FITTED || state == PlaceState.OTHER_FITTED;
    return fitted && engine.renewed().contains(place) ? PartState.NEW_FITTED : plain;
  }

  private static PartState of(PlaceState state) {
    return switch (state) {
      case IN -> PartState.IN;
      case OUT -> PartState.OUT;
      case WASHING -> PartState.WASHING;
      case AT_SHOP -> PartState.AT_SHOP;
      case MISSING -> PartState.MISSING;
      case FITTED -> PartState.FITTED;
      case OTHER_FITTED -> PartState.OTHER_FITTED;
      case FITTED_BUT -> PartState.FITTED_BUT;
      case IN_BUT -> PartState.IN_BUT;
      case OPEN -> PartState.OUT.open();
      case EXCUSED -> PartState.LEFT_EMPTY;
    };
  }

  /** The mark of an answer; none where there was none. */
  static Optional<Sign> sign(Look look) {
    return switch (look) {
      case PASS -> Optional.of(Sign.FITTED);
      case SUSPECT -> Optional.of(Sign.SUSPECT);
      case FAIL -> Optional.of(Sign.FAILED);
      case NOT_LOOKED -> Optional.empty();
    };
  }

  /** Draws a mark with its middle at a place, in mm. */
  static void mark(PaperPage page, Sign sign, double x, double y, double side) throws IOException {
    double unit = Book.GLASS.unit() * wherefrom.drawing.Glass.UNITS_PER_MM;
    Point at = new Point(x * unit, y * unit);
    page.shapes(MarkShapes.of(sign, at, side * unit, Book.GLASS).shapes(), DrawnAs.IN);
  }
}
