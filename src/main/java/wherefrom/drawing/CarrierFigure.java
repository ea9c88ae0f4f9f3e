package wherefrom.drawing;

import java.util.List;
import java.util.Optional;
import wherefrom.parts.BigPartKind;

/**
 * A head or a rocker shaft on a drawing.
 *
 * @param kind which of the two
 * @param cylinder one that lies under it
 * @param solid how it is drawn where it is on: shapes of the drawing's ground
 * @param outline its contour, drawn where it is off
 * @param mark where its mark stands then; none where its parts have marks enough
 * @param side of the mark
 */
public record CarrierFigure(
    BigPartKind kind,
    int cylinder,
    List<Shape> solid,
    List<Shape> outline,
    Optional<Point> mark,
    double side) {
  public CarrierFigure {
    solid = List.copyOf(solid);
    outline = List.copyOf(outline);
  }

  /** The same where there is no room for marks. */
  public CarrierFigure unmarked() {
    return new CarrierFigure(kind, cylinder, solid, outline, Optional.empty(), side);
  }
}
