package wherefrom.workings.catalogue.valvetrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wherefrom.workings.catalogue.Ask;

/**
 * The room at a valve against points and planes in space: the valve's head is a plate square to its
 * stem, moved down with the head and up along the stem with its seat; the gap is looked for along
 * the stem.
 */
class PistonToValveGeometryTest {
  private static final double NEAR = 1e-9;

  /** A direction or a place: across, up. */
  private record Point(double across, double up) {
    Point plus(Point other, double times) {
      return new Point(across + times * other.across, up + times * other.up);
    }

    double dot(Point other) {
      return across * other.across + up * other.up;
    }
  }

  /** From a place along a direction to the plane through a place with a normal. */
  private static double way(Point from, Point along, Point plane, Point normal) {
    Point apart = plane.plus(from, -1);
    return apart.dot(normal) / along.dot(normal);
  }

  private static double asked(String crown, double now, double cut, double tilt, double sink) {
    return Ask.result(
            "piston-to-valve",
            String.format(Locale.ROOT, "clearance-now=%.3fmm", now),
            String.format(Locale.ROOT, "lowering=%.3fmm", cut),
            String.format(Locale.ROOT, "valve-tilt=%.2fdeg", tilt),
            String.format(Locale.ROOT, "seat-sink=%.3fmm", sink),
            "crown=" + crown,
            "side=intake")
        .getValue("clearance")
        .value();
  }

  @Test
  void agreesWithPlanesInSpaceOnBothKindsOfCrown() {
    Random random = new Random(17);
    for (int i = 0; i < 1_000; i++) {
      double now = Math.round(2_500 + 2_000 * random.nextDouble()) / 1000.0;
      double cut = Math.round(1_000 * random.nextDouble()) / 1000.0;
      double sink = Math.round(800 * random.nextDouble()) / 1000.0;
      double tilt = Math.round(3_000 * random.nextDouble()) / 100.0;
      check("flat", now, cut, tilt, sink);
      check("pocket", now, cut, tilt, sink);
    }
  }

  private static void check(String crown, double now, double cut, double tilt, double sink) {
    double angle = Math.toRadians(tilt);
    Point open = new Point(-Math.sin(angle), -Math.cos(angle));
    Point normal = crown.equals("flat") ? new Point(0, 1) : open;
    Point valve = new Point(12, 40);
    Point piston = valve.plus(open, now);
    Point after = valve.plus(new Point(0, -1), cut).plus(open, -sink);
    assertThat(way(after, open, piston, normal))
        .isCloseTo(asked(crown, now, cut, tilt, sink), within(NEAR));
  }
}
