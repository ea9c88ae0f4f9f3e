package wherefrom.scan.geometry;

/**
 * How far the paper lies beside its pose, place by place: displacements at the nodes of a square
 * grid over the label, even in between. In modules, as everything on the tag.
 */
public final class Warp {
  /** Nodes along a side. */
  static final int NODES = 9;

  /** From the symbol's centre to the outermost nodes. */
  static final double REACH = 15;

  private static final double SPACING = 2 * REACH / (NODES - 1);

  /** The farthest that a node may go. */
  private static final double FARTHEST = 2.5;

  final double[] right = new double[NODES * NODES];
  final double[] down = new double[NODES * NODES];
  private double partU;
  private double partV;
  private int node;
  private double offsetU;
  private double offsetV;

  /** Goes to a place: sets the node to its upper left and the offsets there. */
  public void at(double u, double v) {
    double across = Math.max(0, Math.min(NODES - 1.0001, (u + REACH) / SPACING));
    double along = Math.max(0, Math.min(NODES - 1.0001, (v + REACH) / SPACING));
    node = ((int) along) * NODES + ((int) across);
    partU = across - (int) across;
    partV = along - (int) along;
    offsetU = mix(right);
    offsetV = mix(down);
  }

  private double mix(double[] values) {
    double upper = values[node] + (values[node + 1] - values[node]) * partU;
    double one = values[node + NODES];
    double lower = one + (values[node + NODES + 1] - one) * partU;
    return upper + (lower - upper) * partV;
  }

  /** To the right, at the place that {@link #at} went to. */
  public double offsetU() {
    return offsetU;
  }

  /** Downwards, at the place that {@link #at} went to. */
  public double offsetV() {
    return offsetV;
  }

  /** The node of a corner round the place, 0 to 3. */
  int node(int corner) {
    return node + corner % 2 + corner / 2 * NODES;
  }

  /** How much the node of a corner has to say at the place. */
  double share(int corner) {
    return (corner % 2 == 0 ? 1 - partU : partU) * (corner / 2 == 0 ? 1 - partV : partV);
  }

  /** Moves the nodes, those to the right first in the list. */
  void move(double[] step) {
    for (int at = 0; at < right.length; at++) {
      right[at] = limited(right[at] + limited(step[at], 0.8), FARTHEST);
      down[at] = limited(down[at] + limited(step[right.length + at], 0.8), FARTHEST);
    }
  }

  private static double limited(double value, double limit) {
    return Math.max(-limit, Math.min(limit, value));
  }
}
