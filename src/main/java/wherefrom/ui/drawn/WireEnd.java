package wherefrom.ui.drawn;

import java.util.Optional;
import java.util.stream.DoubleStream;
import javafx.geometry.Point2D;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.PartFigure;
import wherefrom.drawing.Role;
import wherefrom.drawing.Shape;
import wherefrom.parts.Place;

/** Where a wire that comes from below ends at a place: at its lower edge, and over no number. */
final class WireEnd {
  /** Half of the wire, in heights of a number. */
  private static final double HALF = 0.2;

  /** How far beside the middle the wire may end, in radii of the ring round the part. */
  private static final double ASIDE = 0.7;

  private WireEnd() {}

  /**
   * Empty where the place is not drawn or lies in the upper half, where the wire would cross other
   * parts.
   */
  static Optional<Point2D> of(Drawing drawn, Place place) {
    return drawn
        .find(place)
        .filter(figure -> figure.pointer().at().y() > drawn.frame().middleY())
        .map(figure -> new Point2D(x(drawn, figure), figure.bounds().bottom()));
  }

  /** The middle of the part, or as far beside it as keeps the wire off the numbers below. */
  private static double x(Drawing drawn, PartFigure figure) {
    double middle = figure.pointer().at().x();
    double aside = figure.pointer().radius() * ASIDE;
    return DoubleStream.of(middle, middle + aside, middle - aside)
        .filter(x -> isFree(drawn, figure, x))
        .findFirst()
        .orElse(middle);
  }

  private static boolean isFree(Drawing drawn, PartFigure figure, double x) {
    return drawn.words().stream()
        .filter(words -> words.role() == Role.NUMBER)
        .map(Shape::bounds)
        .filter(number -> number.bottom() > figure.bounds().bottom())
        .noneMatch(number -> Math.abs(number.middleX() - x) < reach(number));
  }

  /** From the middle of a number to the middle of a wire beside it. */
  private static double reach(Bounds number) {
    return number.width() / 2 + HALF * number.height();
  }
}
