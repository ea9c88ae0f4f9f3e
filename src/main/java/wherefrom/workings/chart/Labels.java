package wherefrom.workings.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where words of a plot have room: on no line, on no dot, and on no other words. */
final class Labels {
  /** Half the height of a line of words, in heights of a capital. */
  private static final double HALF = 0.75;

  private record Line(double x1, double y1, double x2, double y2) {}

  private record Box(double left, double top, double right, double bottom) {}

  /** A place for words: where they begin or end, and half the height of a capital. */
  record Spot(double x, double y, ChartMark.Side side) {}

  private final double capital;
  private final Box frame;
  private final List<Line> lines = new ArrayList<>();
  private final List<Box> taken = new ArrayList<>();

  Labels(double capital, double left, double top, double right, double bottom) {
    this.capital = capital;
    this.frame = new Box(left, top, right, bottom);
  }

  /** A line that no words may lie on. */
  void line(double x1, double y1, double x2, double y2) {
    lines.add(new Line(x1, y1, x2, y2));
  }

  /** The first of some places that is free, and takes it; empty where none is. */
  Optional<Spot> take(List<Spot> spots, double wide) {
    Optional<Spot> chosen = spots.stream().filter(spot -> isFree(box(spot, wide))).findFirst();
    chosen.ifPresent(spot -> taken.add(box(spot, wide)));
    return chosen;
  }

  private Box box(Spot spot, double wide) {
    double left = spot.side() == ChartMark.Side.END ? spot.x() - wide : spot.x();
    double half = HALF * capital;
    return new Box(left, spot.y() - half, left + wide, spot.y() + half);
  }

  private boolean isFree(Box box) {
    boolean inside =
        box.left() >= frame.left()
            && box.right() <= frame.right()
            && box.top() >= frame.top()
            && box.bottom() <= frame.bottom();
    return inside
        && taken.stream().noneMatch(other -> touch(box, other))
        && lines.stream().noneMatch(line -> crosses(line, box));
  }

  private static boolean touch(Box one, Box other) {
    return one.left() < other.right()
        && other.left() < one.right()
        && one.top() < other.bottom()
        && other.top() < one.bottom();
  }

  /**
   * Whether a line meets a box: it is cut at each of the box's sides in turn (Liang, Barsky 1984).
   */
  private static boolean crosses(Line line, Box box) {
    double dx = line.x2() - line.x1();
    double dy = line.y2() - line.y1();
    double[] away = {-dx, dx, -dy, dy};
    double[] within = {
      line.x1() - box.left(),
      box.right() - line.x1(),
      line.y1() - box.top(),
      box.bottom() - line.y1()
    };
    double from = 0;
    double to = 1;
    for (int side = 0; side < away.length; side++) {
      if (away[side] == 0) {
        if (within[side] < 0) {
          return false;
        }
      } else if (away[side] < 0) {
        from = Math.max(from, within[side] / away[side]);
      } else {
        to = Math.min(to, within[side] / away[side]);
      }
    }
    return from <= to;
  }
}
