package wherefrom.scan.geometry;

/** Points of a tag: where they lie on its plane and where on a picture. */
final class PatternPoints {
  private final double[] u;
  private final double[] v;
  private final double[] map = new double[Projection.COEFFICIENTS];
  final double[] flatU;
  final double[] flatV;

  /** How far behind the plane; of a bent tag only. */
  final double[] depth;

  final double[] x;
  final double[] y;

  /** One by what the coordinates are divided by. */
  final double[] inverse;

  /**
   * @param u of each point, in modules from the symbol's centre to the right
   * @param v of each, down
   */
  PatternPoints(double[] u, double[] v) {
    this.u = u;
    this.v = v;
    flatU = u.clone();
    flatV = v.clone();
    depth = new double[u.length];
    x = new double[u.length];
    y = new double[u.length];
    inverse = new double[u.length];
  }

  /** Goes to where the points from the first on are seen. */
  void see(Projection projection, int first) {
    projection.copyTo(map);
    if (projection.isBent()) {
      projection.lay(u, v, first, flatU, flatV, depth);
      seeBent(first);
    } else {
      System.arraycopy(u, first, flatU, first, u.length - first);
      System.arraycopy(v, first, flatV, first, v.length - first);
      seeFlat(first);
    }
  }

  private void seeFlat(int first) {
    for (int at = first; at < x.length; at++) {
      double right = flatU[at];
      double down = flatV[at];
      double by = 1 / (map[6] * right + map[7] * down + 1);
      x[at] = (map[0] * right + map[1] * down + map[2]) * by;
      y[at] = (map[3] * right + map[4] * down + map[5]) * by;
      inverse[at] = by;
    }
  }

  private void seeBent(int first) {
    for (int at = first; at < x.length; at++) {
      double right = flatU[at];
      double down = flatV[at];
      double away = depth[at];
      double by = 1 / (map[6] * right + map[7] * down + 1 + away * map[10]);
      x[at] = (map[0] * right + map[1] * down + map[2] + away * map[8]) * by;
      y[at] = (map[3] * right + map[4] * down + map[5] + away * map[9]) * by;
      inverse[at] = by;
    }
  }
}
