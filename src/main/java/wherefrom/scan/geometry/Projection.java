package wherefrom.scan.geometry;

import wherefrom.job.reader.Corner;

/**
 * Takes places on a tag to places on the picture. A bent tag touches its flat plane along the rod's
 * axis through the symbol's centre and falls away behind it on both sides.
 */
public final class Projection {
  /** Of {@link #copyTo}. */
  static final int COEFFICIENTS = 11;

  private final CameraModel camera;
  private final Homography flat = new Homography(Pose.HALF);
  private final double[] m = new double[8];
  private double bend;
  private double axisCos = 1;
  private double axisSin;
  private double depthX;
  private double depthY;
  private double depthW;
  private double x;
  private double y;

  public Projection(CameraModel camera) {
    this.camera = camera;
  }

  public void set(Pose pose) {
    set(pose.values());
  }

  void set(double[] p) {
    flat.set(p[0], p[1], p[2], p[3], p[4], p[5], p[6], p[7]);
    flat.copyTo(m);
    bend = Math.abs(p[Pose.BEND]) > 1e-4 ? p[Pose.BEND] : 0;
    if (bend != 0) {
      axisCos = Math.cos(p[Pose.AXIS]);
      axisSin = Math.sin(p[Pose.AXIS]);
      setDepth();
    }
  }

  /** The direction away from the tag's face, as long as one module, in picture coordinates. */
  private void setDepth() {
    double k = camera.focal();
    double r1x = (m[0] - camera.centreX() * m[6]) / k;
    double r1y = (m[3] - camera.centreY() * m[6]) / k;
    double r1z = m[6];
    double r2x = (m[1] - camera.centreX() * m[7]) / k;
    double r2y = (m[4] - camera.centreY() * m[7]) / k;
    double r2z = m[7];
    double nx = r1y * r2z - r1z * r2y;
    double ny = r1z * r2x - r1x * r2z;
    double nz = r1x * r2y - r1y * r2x;
    double one = Math.sqrt(r1x * r1x + r1y * r1y + r1z * r1z);
    double two = Math.sqrt(r2x * r2x + r2y * r2y + r2z * r2z);
    double module = Math.sqrt(one * two);
    double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    double scale = length == 0 ? 0 : module / length;
    depthW = nz * scale;
    depthX = nx * scale * k + camera.centreX() * depthW;
    depthY = ny * scale * k + camera.centreY() * depthW;
  }

  /** Sets {@link #x()} and {@link #y()} to where a place on the tag is seen. */
  public void project(double u, double v) {
    double su = u;
    double sv = v;
    double depth = 0;
    if (bend != 0) {
      double across = axisCos * u + axisSin * v;
      double along = axisCos * v - axisSin * u;
      double angle = Math.max(-1.7, Math.min(1.7, across * bend));
      depth = (1 - Math.cos(angle)) / bend;
      double seen = Math.sin(angle) / bend;
      su = axisCos * seen - axisSin * along;
      sv = axisSin * seen + axisCos * along;
    }
    double w = m[6] * su + m[7] * sv + 1 + depth * depthW;
    x = (m[0] * su + m[1] * sv + m[2] + depth * depthX) / w;
    y = (m[3] * su + m[4] * sv + m[5] + depth * depthY) / w;
  }

  /**
   * Where places on a bent tag lie before they are seen, from the first on: on its flat plane, and
   * how far behind it.
   */
  void lay(double[] u, double[] v, int first, double[] flatU, double[] flatV, double[] depth) {
    for (int at = first; at < u.length; at++) {
      double across = axisCos * u[at] + axisSin * v[at];
      double along = axisCos * v[at] - axisSin * u[at];
      double angle = Math.max(-1.7, Math.min(1.7, across * bend));
      depth[at] = (1 - Math.cos(angle)) / bend;
      double seen = Math.sin(angle) / bend;
      flatU[at] = axisCos * seen - axisSin * along;
      flatV[at] = axisSin * seen + axisCos * along;
    }
  }

  boolean isBent() {
    return bend != 0;
  }

  /** The map of the flat plane by row, two numbers in the last, then the direction away from it. */
  void copyTo(double[] all) {
    System.arraycopy(m, 0, all, 0, m.length);
    all[8] = bend == 0 ? 0 : depthX;
    all[9] = bend == 0 ? 0 : depthY;
    all[10] = bend == 0 ? 0 : depthW;
  }

  public double x() {
    return x;
  }

  public double y() {
    return y;
  }

  Corner corner(double u, double v) {
    project(u, v);
    return new Corner(x, y);
  }
}
