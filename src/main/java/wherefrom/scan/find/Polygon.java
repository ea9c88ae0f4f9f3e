package wherefrom.scan.find;

/** A convex polygon, clockwise as seen on the picture; the arrays belong to it. */
final class Polygon {
  private final double[] xs;
  private final double[] ys;

  Polygon(double[] xs, double[] ys) {
    this.xs = xs;
    this.ys = ys;
  }

  int size() {
    return xs.length;
  }

  double x(int corner) {
    return xs[Math.floorMod(corner, xs.length)];
  }

  double y(int corner) {
    return ys[Math.floorMod(corner, ys.length)];
  }

  double area() {
    double twice = 0;
    for (int corner = 0; corner < xs.length; corner++) {
      twice += x(corner) * y(corner + 1) - x(corner + 1) * y(corner);
    }
    return twice / 2;
  }

  Polygon scaled(double factor) {
    double[] sx = new double[xs.length];
    double[] sy = new double[ys.length];
    for (int corner = 0; corner < xs.length; corner++) {
      sx[corner] = xs[corner] * factor;
      sy[corner] = ys[corner] * factor;
    }
    return new Polygon(sx, sy);
  }
}
