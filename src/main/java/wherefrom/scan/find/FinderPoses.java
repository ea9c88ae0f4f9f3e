package wherefrom.scan.find;

import java.util.List;
import java.util.function.Consumer;
import wherefrom.scan.geometry.Pose;

/** Poses that three or two finder patterns suggest. */
final class FinderPoses {
  /** Between the centres of two finder patterns along a side, in modules. */
  private static final double SIDE = 14;

  private FinderPoses() {}

  static void suggest(List<Finder> finders, Consumer<Pose> taker) {
    for (int a = 0; a < finders.size(); a++) {
      for (int b = a + 1; b < finders.size(); b++) {
        if (alike(finders.get(a), finders.get(b))) {
          pair(finders.get(a), finders.get(b), taker);
          for (int c = b + 1; c < finders.size(); c++) {
            if (alike(finders.get(a), finders.get(c)) && alike(finders.get(b), finders.get(c))) {
              triple(finders.get(a), finders.get(b), finders.get(c), taker);
            }
          }
        }
      }
    }
  }

  private static boolean alike(Finder one, Finder other) {
    double module = Math.sqrt(one.module() * other.module());
    double ratio = one.module() / other.module();
    double across = one.x() - other.x();
    double along = one.y() - other.y();
    double far = Math.sqrt(across * across + along * along);
    return ratio > 0.5 && ratio < 2 && far > 5 * module && far < 30 * module;
  }

  private static void triple(Finder a, Finder b, Finder c, Consumer<Pose> taker) {
    corner(a, b, c, taker);
    corner(b, a, c, taker);
    corner(c, a, b, taker);
  }

  /** The first is the top left one; which of the others is right follows from the sense. */
  private static void corner(Finder corner, Finder one, Finder other, Consumer<Pose> taker) {
    double ax = one.x() - corner.x();
    double ay = one.y() - corner.y();
    double bx = other.x() - corner.x();
    double by = other.y() - corner.y();
    double cross = ax * by - ay * bx;
    double cosine = (ax * bx + ay * by) / (Math.hypot(ax, ay) * Math.hypot(bx, by));
    double ratio = Math.hypot(ax, ay) / Math.hypot(bx, by);
    if (Math.abs(cosine) > 0.8 || ratio > 3.5 || ratio < 1 / 3.5) {
      return;
    }
    double x = (one.x() + other.x()) / 2;
    double y = (one.y() + other.y()) / 2;
    double[] first = {ax / SIDE, ay / SIDE};
    double[] second = {bx / SIDE, by / SIDE};
    taker.accept(cross > 0 ? Pose.ofAxes(x, y, first, second) : Pose.ofAxes(x, y, second, first));
  }

  private static void pair(Finder one, Finder other, Consumer<Pose> taker) {
    double dx = other.x() - one.x();
    double dy = other.y() - one.y();
    for (int turn = 0; turn < 2; turn++) {
      double sign = turn == 0 ? 1 : -1;
      double rx = sign * dx / SIDE;
      double ry = sign * dy / SIDE;
      double mx = (one.x() + other.x()) / 2;
      double my = (one.y() + other.y()) / 2;
      double[] along = {rx, ry};
      double[] across = {-ry, rx};
      taker.accept(Pose.ofAxes(mx + 7 * across[0], my + 7 * across[1], along, across));
      double[] back = {ry, -rx};
      taker.accept(Pose.ofAxes(mx + 7 * back[0], my + 7 * back[1], back, along));
      double[] right = {(rx - ry) / 2, (ry + rx) / 2};
      double[] down = {-right[1], right[0]};
      taker.accept(Pose.ofAxes(mx, my, right, down));
    }
  }
}
