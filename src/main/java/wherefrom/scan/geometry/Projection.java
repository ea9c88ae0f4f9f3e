package wherefrom.scan.geometry;

import wherefrom.job.reader.Corner;

/**
 * Takes places on a tag to places on the picture. A bent tag touches its flat plane along the rod's
 * axis through the symbol's centre and falls away behind it on both sides.
 */
public final class Projection {
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

  /** Where many places are seen: {@link #project} for each from the first on. */
  void project(double[] u, double[] v, int first, double[] xs, double[] ys) {
    if (bend != 0) {
      for (int at = first; at < u.length; at++) {
        project(u[at], v[at]);
        xs[at] = x;
        ys[at] = y;
      }
      return;
    }
    double right = m[0];
    double down = m[3];
    double w0 = m[6];
    double w1 = m[7];
    double x1 = m[1];
    double x2 = m[2];
    double y1 = m[4];
    double y2 = m[5];
    for (int at = first; at < u.length; at++) {
      double w = w0 * u[at] + w1 * v[at] + 1;
      xs[at] = (right * u[at] + x1 * v[at] + x2) / w;
      ys[at] = (down * u[at] + y1 * v[at] + y2) / w;
    }
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
