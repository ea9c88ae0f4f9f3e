package wherefrom.drawing;

import java.util.List;

/**
 * Bench, basket and vice as plain drawings in a box of 128 by 98 units, and where the parts lie in
 * it.
 */
public final class HolderShapes {
  /** The box, in units. */
  public static final double WIDE = 128;

  public static final double HIGH = 98;

  private final ShapeCollector out;
  private final double unit;

  private HolderShapes(double unit) {
    this.unit = unit;
    this.out = new ShapeCollector(unit / 0.66);
  }

  /**
   * What lies behind the parts.
   *
   * @param unit of the box, in the drawing's unit
   */
  public static List<Shape> behind(Holder holder, double unit) {
    HolderShapes shapes = new HolderShapes(unit);
    if (holder == Holder.BASKET) {
      shapes.handle();
    }
    return shapes.out.shapes();
  }

  /** What lies before the parts. */
  public static List<Shape> before(Holder holder, double unit) {
    HolderShapes shapes = new HolderShapes(unit);
    switch (holder) {
      case BENCH -> shapes.bench();
      case BASKET -> shapes.basket();
      case VICE -> shapes.vice();
      case NOWHERE -> {}
    }
    return shapes.out.shapes();
  }

  /** The squares in which its parts are drawn. */
  public static List<Bounds> parts(Holder holder, double unit) {
    return switch (holder) {
      case BENCH ->
          List.of(square(6, 2, 46, unit), square(46, 2, 46, unit), square(86, 2, 46, unit));
      case BASKET -> List.of(square(20, 6, 46, unit), square(62, 6, 46, unit));
      case VICE -> List.of(square(34, 0, 60, unit));
      case NOWHERE -> List.of(square(16, 0, 96, unit));
    };
  }

  private static Bounds square(double x, double y, double side, double unit) {
    return new Bounds(x * unit, y * unit, side * unit, side * unit);
  }

  private void slab(double x, double y, double wide, double high, Role role) {
    out.slab(x * unit, y * unit, wide * unit, high * unit, role);
  }

  private Pen at(double x, double y) {
    return Pen.at(x * unit, y * unit);
  }

  private void bench() {
    slab(0, 50, WIDE, 12, Role.CAST);
    slab(10, 62, 10, 34, Role.CAST);
    slab(108, 62, 10, 34, Role.CAST);
  }

  private void handle() {
    Pen pen = at(16, 44).arc(48 * unit, 44 * unit, true, 112 * unit, 44 * unit);
    out.outline(pen, Role.TEETH);
  }

  private void basket() {
    out.outline(
        at(2, 44).toX(126 * unit).to(108 * unit, 96 * unit).toX(20 * unit).close(), Role.METAL);
  }

  private void vice() {
    out.outline(
        at(24, 90)
            .toY(22 * unit)
            .toX(46 * unit)
            .toY(62 * unit)
            .toX(82 * unit)
            .toY(22 * unit)
            .toX(104 * unit)
            .toY(90 * unit)
            .close(),
        Role.CAST);
    slab(104, 49, 22, 6, Role.INK);
    slab(120, 34, 4, 36, Role.INK);
    slab(8, 86, 112, 12, Role.CAST);
  }
}
