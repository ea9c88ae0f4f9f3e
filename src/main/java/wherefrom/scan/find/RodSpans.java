package wherefrom.scan.find;

import java.util.ArrayList;
import java.util.List;
import wherefrom.scan.find.DarkLines.Line;
import wherefrom.scan.geometry.LabelPattern;
import wherefrom.scan.geometry.RodSpan;
import wherefrom.scan.grey.Level;

/**
 * Two sides of a label's frame that cross a thin rod: dark lines of one length that lie across from
 * each other. They are in sight however far the label goes round.
 */
final class RodSpans {
  /**
   * From line to line by a line's length: the symbol goes 110 to 160 degrees round, ends unsure.
   */
  private static final double NEAREST = 1.3;

  private static final double FARTHEST = 3.9;

  /** The shorter line by the longer one. */
  private static final double ALIKE = 0.5;

  /** Radians from the direction of one line to that of the other, and to square across. */
  private static final double ASKEW = 0.3;

  private final double apart;

  RodSpans(LabelPattern pattern) {
    apart = 2 * pattern.frameHalf() - pattern.frameWidth();
  }

  List<RodSpan> list(Level level) {
    List<Line> lines = new DarkLines(level).list();
    List<RodSpan> spans = new ArrayList<>();
    for (int at = 0; at < lines.size(); at++) {
      for (Line other : lines.subList(at + 1, lines.size())) {
        if (isPair(lines.get(at), other)) {
          spans.add(span(lines.get(at), other, level.shrink()));
        }
      }
    }
    return spans;
  }

  private static boolean isPair(Line one, Line other) {
    double length = (one.length() + other.length()) / 2;
    double far = Math.hypot(other.x() - one.x(), other.y() - one.y()) / length;
    double square = direction(one, other) + Math.PI / 2;
    return far > NEAREST
        && far < FARTHEST
        && Math.min(one.length(), other.length()) > ALIKE * Math.max(one.length(), other.length())
        && DarkLines.between(one.direction(), other.direction()) < ASKEW
        && DarkLines.between(one.direction(), square) < ASKEW
        && DarkLines.between(other.direction(), square) < ASKEW;
  }

  private static double direction(Line one, Line other) {
    return Math.atan2(other.y() - one.y(), other.x() - one.x());
  }

  private RodSpan span(Line one, Line other, int shrink) {
    double far = Math.hypot(other.x() - one.x(), other.y() - one.y());
    return new RodSpan(
        (one.x() + other.x()) / 2 * shrink,
        (one.y() + other.y()) / 2 * shrink,
        far / apart * shrink,
        direction(one, other));
  }
}
