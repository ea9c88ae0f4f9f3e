package wherefrom.report;

import java.util.List;
import java.util.Optional;
import wherefrom.drawing.EngineGeometry;
import wherefrom.drawing.Point;
import wherefrom.drawing.Role;
import wherefrom.drawing.Shape;
import wherefrom.drawing.View;
import wherefrom.inspection.Subject;

/** Rings round the surfaces that a machine shop works on, where they are seen from below. */
final class WorkRings {
  /** Of the distance between two bores. */
  private static final double RADIUS = 0.27;

  private static final double LINE = 4;

  private WorkRings() {}

  static List<Shape> of(EngineGeometry at, List<Subject.AFeature> surfaces) {
    if (at.view() != View.BELOW) {
      return List.of();
    }
    return surfaces.stream()
        .flatMap(surface -> centre(at, surface).stream())
        .map(centre -> ring(at, centre))
        .toList();
  }

  private static Shape ring(EngineGeometry at, Point centre) {
    double width = LINE * at.glass().unit();
    return new Shape.Disc(centre.x(), centre.y(), RADIUS * at.pitch(), Role.RING, width);
  }

  /** Heads, decks and cam bearings are not seen from below. */
  private static Optional<Point> centre(EngineGeometry at, Subject.AFeature surface) {
    return switch (surface.feature().reach()) {
      case CYLINDER -> Optional.of(cylinder(at, surface));
      case MAIN -> Optional.of(new Point(at.mainView(surface.number()).x(), at.axis()));
      case VALVE, CAM_BEARING, BANK, WHOLE -> Optional.empty();
    };
  }

  private static Point cylinder(EngineGeometry at, Subject.AFeature surface) {
    return switch (surface.feature()) {
      case ROD_JOURNAL, ROD_HOUSING -> at.pin(surface.number());
      default -> at.rodView(surface.number());
    };
  }
}
