package wherefrom.drawing;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import wherefrom.engine.Layout;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.BigPartName;

/**
 * The outline of a big part, for keys and lists: only what every one of its kind has. A head is
 * seen from its gasket side with as many bores as the layout says.
 */
public final class BigPartOutline {
  /** How high it is, of its width. */
  public static final double HIGH = 0.6;

  private final ShapeCollector out;
  private final Bounds room;

  private BigPartOutline(Bounds room, Glass glass) {
    this.room = room;
    this.out = new ShapeCollector(glass);
  }

  /**
   * Its shapes.
   *
   * @param room whose height is {@link #HIGH} of its width
   */
  public static List<Shape> of(BigPartName name, Layout layout, Bounds room, Glass glass) {
    BigPartOutline outline = new BigPartOutline(room, glass);
    outline.draw(name, layout);
    return outline.out.shapes();
  }

  private void draw(BigPartName name, Layout layout) {
    switch (name.kind()) {
      case HEAD -> head(bores(name, layout));
      case EXHAUST, INTAKE -> manifold(bores(name, layout), name.kind() == BigPartKind.INTAKE);
      case VALVE_COVER, LIFTER_COVER -> cover(2);
      case PAN, FRONT_COVER -> pan(name.kind() == BigPartKind.PAN);
      case CAMSHAFT, CRANKSHAFT -> shaft(name.kind() == BigPartKind.CRANKSHAFT);
      case ROCKER_SHAFT -> rockerShaft();
      default -> others(name.kind());
    }
  }

  private void others(BigPartKind kind) {
    switch (kind) {
      case DAMPER, FLYWHEEL, REAR_SEAL -> wheel(kind == BigPartKind.FLYWHEEL ? 6 : 3);
      case OIL_PUMP -> pump(2);
      case WATER_PUMP -> pump(1);
      case FUEL_PUMP -> fuelPump();
      case TIMING_SET -> timing();
      case DISTRIBUTOR -> distributor();
      case CARBURETOR -> carburetor();
      case BRACKET -> bracket();
      default -> cover(0);
    }
  }

  private static int bores(BigPartName name, Layout layout) {
    return layout.banks().stream()
        .filter(bank -> name.bank().isEmpty() || bank.name().equals(name.bank()))
        .mapToInt(bank -> bank.cylinders().size())
        .max()
        .orElse(1);
  }

  private double x(double part) {
    return room.x() + part * room.width();
  }

  private double y(double part) {
    return room.y() + part * room.height();
  }

  private void slab(double left, double top, double right, double bottom, double round, Role role) {
    out.slab(x(left), y(top), x(right) - x(left), y(bottom) - y(top), round * room.height(), role);
  }

  private void disc(double across, double down, double radius, Role role) {
    out.disc(x(across), y(down), radius * room.height(), role);
  }

  /** So many places side by side. */
  private static DoubleStream along(int count, double from, double to) {
    double step = (to - from) / count;
    return IntStream.range(0, count).mapToDouble(at -> from + (at + 0.5) * step);
  }

  private void head(int bores) {
    slab(0.02, 0.10, 0.98, 0.90, 0.06, Role.BODY);
    double radius = Math.min(0.30, 0.42 * 0.92 / bores / HIGH);
    along(bores, 0.05, 0.95).forEach(at -> disc(at, 0.5, radius, Role.BODY));
  }

  private void manifold(int runners, boolean intake) {
    slab(0.06, intake ? 0.30 : 0.10, 0.94, intake ? 0.70 : 0.40, 0.10, Role.BODY);
    along(runners, 0.06, 0.94)
        .forEach(
            at -> {
              slab(at - 0.05, 0.40, at + 0.05, 0.92, 0.05, Role.BODY);
              if (intake) {
                slab(at - 0.05, 0.08, at + 0.05, 0.60, 0.05, Role.BODY);
              }
            });
  }

  private void cover(int bolts) {
    slab(0.03, 0.14, 0.97, 0.86, 0.22, Role.BODY);
    along(bolts, 0.06, 0.94).forEach(at -> disc(at, 0.5, 0.08, Role.BODY));
  }

  private void pan(boolean deep) {
    slab(0.04, 0.10, 0.96, 0.40, 0.08, Role.BODY);
    slab(deep ? 0.40 : 0.16, 0.40, deep ? 0.90 : 0.84, 0.92, 0.12, Role.BODY);
  }

  private void shaft(boolean crank) {
    slab(0.02, 0.44, 0.98, 0.56, 0.04, Role.BODY);
    along(crank ? 4 : 8, 0.10, 0.90)
        .forEach(
            at -> {
              double half = crank ? 0.05 : 0.025;
              slab(at - half, crank ? 0.14 : 0.30, at + half, 0.72, 0.05, Role.BODY);
            });
  }

  private void rockerShaft() {
    slab(0.02, 0.42, 0.98, 0.58, 0.06, Role.BODY);
    along(4, 0.04, 0.96).forEach(at -> slab(at - 0.04, 0.30, at + 0.04, 0.84, 0.03, Role.BODY));
  }

  private void wheel(int bolts) {
    disc(0.5, 0.5, 0.46, Role.BODY);
    disc(0.5, 0.5, 0.14, Role.BODY);
    for (int at = 0; at < bolts; at++) {
      double turn = at * 2 * Math.PI / bolts - Math.PI / 2;
      double across = 0.5 + 0.27 * HIGH * Math.cos(turn);
      disc(across, 0.5 + 0.27 * Math.sin(turn), 0.05, Role.BODY);
    }
  }

  private void pump(int gears) {
    slab(0.43, 0.04, 0.57, 0.26, 0, Role.BODY);
    slab(0.20, 0.22, 0.80, 0.94, 0.10, Role.BODY);
    if (gears == 2) {
      disc(0.36, 0.58, 0.23, Role.BODY);
      disc(0.64, 0.58, 0.23, Role.BODY);
    } else {
      disc(0.5, 0.58, 0.26, Role.BODY);
    }
  }

  /** The dome over its flange, the arm that the camshaft moves, the two pipes. */
  private void fuelPump() {
    slab(0.16, 0.52, 0.44, 0.60, 0.03, Role.BODY);
    slab(0.40, 0.40, 0.47, 0.72, 0.01, Role.BODY);
    slab(0.47, 0.46, 0.86, 0.66, 0, Role.BODY);
    slab(0.51, 0.18, 0.82, 0.46, 0.12, Role.BODY);
    slab(0.57, 0.66, 0.76, 0.90, 0.05, Role.BODY);
    slab(0.82, 0.28, 0.95, 0.35, 0, Role.BODY);
    slab(0.76, 0.76, 0.90, 0.83, 0, Role.BODY);
  }

  private void timing() {
    disc(0.5, 0.30, 0.26, Role.BODY);
    disc(0.5, 0.80, 0.14, Role.BODY);
    out.line(
        x(0.5) - 0.26 * room.height(), y(0.30), x(0.5) - 0.14 * room.height(), y(0.80), Role.LINE);
    out.line(
        x(0.5) + 0.26 * room.height(), y(0.30), x(0.5) + 0.14 * room.height(), y(0.80), Role.LINE);
  }

  private void distributor() {
    slab(0.45, 0.50, 0.55, 0.98, 0.02, Role.BODY);
    slab(0.32, 0.20, 0.68, 0.56, 0.12, Role.BODY);
    along(4, 0.34, 0.66).forEach(at -> slab(at - 0.02, 0.06, at + 0.02, 0.22, 0, Role.BODY));
  }

  private void carburetor() {
    slab(0.24, 0.74, 0.76, 0.94, 0.05, Role.BODY);
    slab(0.30, 0.24, 0.70, 0.74, 0.08, Role.BODY);
    slab(0.38, 0.06, 0.62, 0.24, 0.04, Role.BODY);
  }

  private void bracket() {
    slab(0.10, 0.68, 0.90, 0.88, 0.04, Role.BODY);
    slab(0.10, 0.12, 0.26, 0.88, 0.04, Role.BODY);
    disc(0.18, 0.26, 0.06, Role.BODY);
    disc(0.78, 0.78, 0.06, Role.BODY);
  }
}
