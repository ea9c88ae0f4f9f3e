package wherefrom.scan.find;

import java.util.List;
import java.util.function.Consumer;
import wherefrom.scan.geometry.Pose;

/**
 * Poses that a single finder pattern suggests: the hull of its ring tells how it lies, and it may
 * be any of the three.
 */
final class FinderRings {
  private static final double DARK_HALF = 3.5;
  private static final double LIGHT_HALF = 2.5;
  private static final int[][] ROLES = {{-7, -7}, {7, -7}, {-7, 7}};

  private FinderRings() {}

  static void suggest(
      List<Finder> finders, List<Component> patches, int shrink, Consumer<Pose> taker) {
    for (Component patch : patches) {
      patch
          .quad()
          .filter(quad -> patch.hull().area() > 0.8 * quad.area())
          .map(quad -> quad.scaled(shrink))
          .filter(quad -> isRing(quad, patch.dark(), finders))
          .ifPresent(quad -> ring(quad, patch.dark() ? DARK_HALF : LIGHT_HALF, taker));
    }
  }

  private static boolean isRing(Polygon quad, boolean dark, List<Finder> finders) {
    double x = (quad.x(0) + quad.x(1) + quad.x(2) + quad.x(3)) / 4;
    double y = (quad.y(0) + quad.y(1) + quad.y(2) + quad.y(3)) / 4;
    double side = Math.sqrt(quad.area());
    double wanted = 2 * (dark ? DARK_HALF : LIGHT_HALF);
    for (Finder finder : finders) {
      double modules = side / finder.module();
      if (Math.hypot(finder.x() - x, finder.y() - y) < 1.2 * finder.module()
          && modules > 0.6 * wanted
          && modules < 1.3 * wanted) {
        return true;
      }
    }
    return false;
  }

  private static void ring(Polygon quad, double half, Consumer<Pose> taker) {
    double modules = 4 * half;
    double[] right = {
      (quad.x(1) - quad.x(0) + quad.x(2) - quad.x(3)) / modules,
      (quad.y(1) - quad.y(0) + quad.y(2) - quad.y(3)) / modules
    };
    double[] down = {
      (quad.x(3) - quad.x(0) + quad.x(2) - quad.x(1)) / modules,
      (quad.y(3) - quad.y(0) + quad.y(2) - quad.y(1)) / modules
    };
    double x = (quad.x(0) + quad.x(1) + quad.x(2) + quad.x(3)) / 4;
    double y = (quad.y(0) + quad.y(1) + quad.y(2) + quad.y(3)) / 4;
    for (int[] role : ROLES) {
      for (int quarters = 0; quarters < 4; quarters++) {
        int[] place = turned(role, quarters);
        double cx = x - place[0] * right[0] - place[1] * down[0];
        double cy = y - place[0] * right[1] - place[1] * down[1];
        taker.accept(Pose.ofAxes(cx, cy, right, down).turned(quarters));
      }
    }
  }

  /** Where a place on the tag lies on the picture's square when the tag is turned. */
  private static int[] turned(int[] place, int quarters) {
    int u = place[0];
    int v = place[1];
    for (int turn = 0; turn < quarters; turn++) {
      int before = u;
      u = -v;
      v = before;
    }
    return new int[] {u, v};
  }
}
