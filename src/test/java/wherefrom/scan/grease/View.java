package wherefrom.scan.grease;

/**
 * A pinhole camera that looks at a label, flat or bent round a rod. Lengths are in label block
 * widths; the label's origin is the symbol's centre, x right, y down, z away from the camera.
 *
 * @param focal focal length in pixels
 * @param bend 1 / radius of the rod; 0 is flat
 * @param axis angle of the rod's axis in the label's plane; 0 is upright along y
 */
record View(
    int width,
    int height,
    double focal,
    double[] rotation,
    double[] place,
    double bend,
    double axis) {

  /** Turned in its plane by roll, then tilted about an axis in the picture plane at an angle. */
  static double[] rotation(double roll, double tilt, double towards) {
    double[] spin = about(0, 0, 1, roll);
    double[] lean = about(Math.cos(towards), Math.sin(towards), 0, tilt);
    return product(lean, spin);
  }

  private static double[] about(double x, double y, double z, double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    double d = 1 - c;
    return new double[] {
      c + x * x * d,
      x * y * d - z * s,
      x * z * d + y * s,
      y * x * d + z * s,
      c + y * y * d,
      y * z * d - x * s,
      z * x * d - y * s,
      z * y * d + x * s,
      c + z * z * d
    };
  }

  private static double[] product(double[] left, double[] right) {
    double[] product = new double[9];
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 3; column++) {
        for (int at = 0; at < 3; at++) {
          product[row * 3 + column] += left[row * 3 + at] * right[at * 3 + column];
        }
      }
    }
    return product;
  }

  /** The pixel on which a point of the label falls, hidden or not. */
  double[] project(double x, double y) {
    double c = Math.cos(axis);
    double s = Math.sin(axis);
    double across = c * x + s * y;
    double along = -s * x + c * y;
    double depth = 0;
    if (bend > 0) {
      depth = (1 - Math.cos(across * bend)) / bend;
      across = Math.sin(across * bend) / bend;
    }
    double lx = c * across - s * along;
    double ly = s * across + c * along;
    double px = rotation[0] * lx + rotation[1] * ly + rotation[2] * depth + place[0];
    double py = rotation[3] * lx + rotation[4] * ly + rotation[5] * depth + place[1];
    double pz = rotation[6] * lx + rotation[7] * ly + rotation[8] * depth + place[2];
    return new double[] {width / 2.0 + focal * px / pz, height / 2.0 + focal * py / pz};
  }

  /**
   * Where the ray through a pixel meets the label's plane or rod.
   *
   * @param hit filled with x, y on the label and the cosine between ray and surface
   * @return whether it meets at all
   */
  boolean meet(double px, double py, double[] hit) {
    double rx = (px - width / 2.0) / focal;
    double ry = (py - height / 2.0) / focal;
    double dx = rotation[0] * rx + rotation[3] * ry + rotation[6];
    double dy = rotation[1] * rx + rotation[4] * ry + rotation[7];
    double dz = rotation[2] * rx + rotation[5] * ry + rotation[8];
    double ox = -(rotation[0] * place[0] + rotation[3] * place[1] + rotation[6] * place[2]);
    double oy = -(rotation[1] * place[0] + rotation[4] * place[1] + rotation[7] * place[2]);
    double oz = -(rotation[2] * place[0] + rotation[5] * place[1] + rotation[8] * place[2]);
    double length = Math.sqrt(dx * dx + dy * dy + dz * dz);
    if (bend <= 0) {
      if (dz <= 1e-6) {
        return false;
      }
      double t = -oz / dz;
      hit[0] = ox + t * dx;
      hit[1] = oy + t * dy;
      hit[2] = dz / length;
      return t > 0;
    }
    return meetRod(new double[] {ox, oy, oz}, new double[] {dx, dy, dz}, length, hit);
  }

  private boolean meetRod(double[] origin, double[] ray, double length, double[] hit) {
    double c = Math.cos(axis);
    double s = Math.sin(axis);
    double radius = 1 / bend;
    double oAcross = c * origin[0] + s * origin[1];
    double oAlong = -s * origin[0] + c * origin[1];
    double dAcross = c * ray[0] + s * ray[1];
    double dAlong = -s * ray[0] + c * ray[1];
    double oz = origin[2] - radius;
    double a = dAcross * dAcross + ray[2] * ray[2];
    double b = oAcross * dAcross + oz * ray[2];
    double disc = b * b - a * (oAcross * oAcross + oz * oz - radius * radius);
    if (disc <= 0) {
      return false;
    }
    double t = (-b - Math.sqrt(disc)) / a;
    double across = oAcross + t * dAcross;
    double depth = oz + t * ray[2];
    double angle = Math.atan2(across, -depth);
    double arc = angle * radius;
    double along = oAlong + t * dAlong;
    hit[0] = c * arc - s * along;
    hit[1] = s * arc + c * along;
    hit[2] = -(across * dAcross + depth * ray[2]) / (radius * length);
    return t > 0;
  }
}
