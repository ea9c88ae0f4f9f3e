package wherefrom.scan.grease;

/** A label as it lies on the bench: what it reflects and where paper is left. */
final class Paper {
  final Plane[] levels;
  final Plane[] cover;

  /** Whether nothing is torn off. */
  final boolean whole;

  Paper(Plane reflectance, Plane coverage) {
    levels = pyramid(reflectance);
    cover = pyramid(coverage);
    whole = isFull(coverage);
  }

  private static boolean isFull(Plane coverage) {
    for (float value : coverage.values) {
      if (value != 1) {
        return false;
      }
    }
    return true;
  }

  private static Plane[] pyramid(Plane base) {
    Plane[] levels = new Plane[5];
    levels[0] = base;
    for (int level = 1; level < levels.length; level++) {
      levels[level] = levels[level - 1].half();
    }
    return levels;
  }

  static Plane full() {
    Plane plane = new Plane(LabelArt.PAPER_WIDTH, LabelArt.PAPER_HEIGHT);
    java.util.Arrays.fill(plane.values, 1f);
    return plane;
  }
}
