package wherefrom.scan.geometry;

/**
 * The points of a {@link LabelPattern}: where they lie on the tag's plane and where on a picture.
 */
final class PatternPoints {
  private final LabelPattern pattern;
  private final double[] map = new double[Projection.COEFFICIENTS];
  final double[] flatU;
  final double[] flatV;

  /** How far behind the plane; of a bent tag only. */
  final double[] depth;

  final double[] x;
  final double[] y;

  /** One by what the coordinates are divided by. */
  final double[] inverse;

  PatternPoints(LabelPattern pattern) {
    this.pattern = pattern;
    flatU = pattern.u.clone();
    flatV = pattern.v.clone();
    depth = new double[pattern.size];
    x = new double[pattern.size];
    y = new double[pattern.size];
    inverse = new double[pattern.size];
  }

  /** Goes to where the points from the first on are seen. */
  void see(Projection projection, int first) {
    projection.copyTo(map);
    if (projection.isBent()) {
      projection.lay(pattern.u, pattern.v, first, flatU, flatV, depth);
      seeBent(first);
    } else {
      System.arraycopy(pattern.u, first, flatU, first, pattern.size - first);
      System.arraycopy(pattern.v, first, flatV, first, pattern.size - first);
      seeFlat(first);
    }
  }

  private void seeFlat(int first) {
    for (int at = first; at < x.length; at++) {
      double u = flatU[at];
      double v = flatV[at];
      double by = 1 / (map[6] * u + map[7] * v + 1);
      x[at] = (map[0] * u + map[1] * v + map[2]) * by;
      y[at] = (map[3] * u + map[4] * v + map[5]) * by;
      inverse[at] = by;
    }
  }

  private void seeBent(int first) {
    for (int at = first; at < x.length; at++) {
      double u = flatU[at];
      double v = flatV[at];
      double away = depth[at];
      double by = 1 / (map[6] * u + map[7] * v + 1 + away * map[10]);
      x[at] = (map[0] * u + map[1] * v + map[2] + away * map[8]) * by;
      y[at] = (map[3] * u + map[4] * v + map[5] + away * map[9]) * by;
      inverse[at] = by;
    }
  }
}
