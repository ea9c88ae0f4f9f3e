package wherefrom.scan.geometry;

/**
 * The perspective map that takes a square to four points, in closed form (P. Heckbert, Fundamentals
 * of Texture Mapping and Image Warping, 1989, section 2.2.3).
 */
final class Homography {
  private final double half;
  private double a;
  private double b;
  private double c;
  private double d;
  private double e;
  private double f;
  private double g;
  private double h;

  Homography(double half) {
    this.half = half;
  }

  static Homography ofSquare(double[] xs, double[] ys, double half) {
    Homography map = new Homography(half);
    map.set(xs[0], ys[0], xs[1], ys[1], xs[2], ys[2], xs[3], ys[3]);
    return map;
  }

  /** Corners clockwise from (-half, -half). */
  void set(double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3) {
    double sx = x0 - x1 + x2 - x3;
    double sy = y0 - y1 + y2 - y3;
    double dx1 = x1 - x2;
    double dx2 = x3 - x2;
    double dy1 = y1 - y2;
    double dy2 = y3 - y2;
    double det = dx1 * dy2 - dx2 * dy1;
    double gs = det == 0 ? 0 : (sx * dy2 - dx2 * sy) / det;
    double hs = det == 0 ? 0 : (dx1 * sy - sx * dy1) / det;
    double side = 2 * half;
    double as = x1 - x0 + gs * x1;
    double bs = x3 - x0 + hs * x3;
    double ds = y1 - y0 + gs * y1;
    double es = y3 - y0 + hs * y3;
    double w = 1 + (gs + hs) / 2;
    a = as / side / w;
    b = bs / side / w;
    c = (x0 + (as + bs) / 2) / w;
    d = ds / side / w;
    e = es / side / w;
    f = (y0 + (ds + es) / 2) / w;
    g = gs / side / w;
    h = hs / side / w;
  }

  double x(double u, double v) {
    return (a * u + b * v + c) / (g * u + h * v + 1);
  }

  double y(double u, double v) {
    return (d * u + e * v + f) / (g * u + h * v + 1);
  }

  /** Numerators and denominator by row: three for x, three for y, two and 1 below. */
  void copyTo(double[] coefficients) {
    coefficients[0] = a;
    coefficients[1] = b;
    coefficients[2] = c;
    coefficients[3] = d;
    coefficients[4] = e;
    coefficients[5] = f;
    coefficients[6] = g;
    coefficients[7] = h;
  }
}
