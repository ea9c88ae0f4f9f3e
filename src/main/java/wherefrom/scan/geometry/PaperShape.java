package wherefrom.scan.geometry;

import java.util.ArrayList;
import java.util.List;
import wherefrom.scan.grey.Level;

/**
 * Whether the paper of a label is flat or bent evenly: the corners of its frame, the middles of its
 * sides and its finder patterns are looked for one by one round where the pose has them. On flat
 * paper what is left of their shifts, once the pose is taken for a little wrong, is next to
 * nothing, whatever dirt lies between them.
 */
public final class PaperShape {
  /** Places looked at for each module, across and down. */
  private static final int FINE = 4;

  /** From the symbol's centre to the edge of what is looked at, in modules. */
  private static final int REACH = 20;

  private static final int SIDE = 2 * REACH * FINE + 1;

  /** How far a piece is looked for beside its place, in steps. */
  private static final int FAR = 2 * FINE;

  /** Correlation from which a piece counts as seen. */
  private static final double SEEN = 0.62;

  /** Pieces that must be seen, of eleven, for an answer. */
  private static final int LEAST = 6;

  private static final double FINDER = 7;
  private static final double CORNER = 15;
  private static final double MIDDLE = 15.5;
  private static final List<Piece> PIECES = pieces();

  private final Projection projection;

  /** What each piece looks like, twice a module across and down. */
  private final float[][] wanted = new float[PIECES.size()][];

  private final float[] grey = new float[SIDE * SIDE];

  /**
   * A piece of the pattern.
   *
   * @param reach from its middle to its edge, in modules
   * @param across whether it tells how far it lies aside
   * @param down whether it tells how far it lies below
   */
  private record Piece(double u, double v, double reach, boolean across, boolean down) {
    int side() {
      return (int) Math.round(4 * reach) + 1;
    }

    /** Where its upper left corner stands among the places looked at. */
    int first() {
      int row = (int) Math.round((v - reach + REACH) * FINE);
      return row * SIDE + (int) Math.round((u - reach + REACH) * FINE);
    }
  }

  /** Where one was found, beside its place in modules. */
  private record Found(Piece piece, double right, double below) {}

  public PaperShape(LabelPattern pattern, CameraModel camera) {
    projection = new Projection(camera);
    for (int at = 0; at < wanted.length; at++) {
      wanted[at] = wanted(pattern, PIECES.get(at));
    }
  }

  private static float[] wanted(LabelPattern pattern, Piece piece) {
    int side = piece.side();
    float[] values = new float[side * side];
    for (int at = 0; at < values.length; at++) {
      int row = at / side;
      double u = piece.u() - piece.reach() + at % side / 2.0;
      values[at] = (float) pattern.ideal(u, piece.v() - piece.reach() + row / 2.0);
    }
    return values;
  }

  private static List<Piece> pieces() {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Piece(-FINDER, -FINDER, 4.5, true, true));
    pieces.add(new Piece(FINDER, -FINDER, 4.5, true, true));
    pieces.add(new Piece(-FINDER, FINDER, 4.5, true, true));
    for (int sign = -1; sign <= 1; sign += 2) {
      pieces.add(new Piece(sign * CORNER, -CORNER, 3, true, true));
      pieces.add(new Piece(sign * CORNER, CORNER, 3, true, true));
      pieces.add(new Piece(sign * MIDDLE, 0, 2.5, true, false));
      pieces.add(new Piece(0, sign * MIDDLE, 2.5, false, true));
    }
    return pieces;
  }

  /**
   * How far the pieces lie beside where those of a stiff label would, in modules, in the middle
   * case; 0 where too few of them are seen.
   */
  public double unevenness(Level level, Pose pose) {
    take(level, pose);
    List<Found> found = new ArrayList<>();
    for (int piece = 0; piece < wanted.length; piece++) {
      look(PIECES.get(piece), wanted[piece], found);
    }
    if (found.size() < LEAST) {
      return 0;
    }
    List<double[]> across = new ArrayList<>();
    List<double[]> down = new ArrayList<>();
    for (Found one : found) {
      if (one.piece().across()) {
        across.add(new double[] {one.piece().u(), one.piece().v(), one.right()});
      }
      if (one.piece().down()) {
        down.add(new double[] {one.piece().u(), one.piece().v(), one.below()});
      }
    }
    List<Double> left = new ArrayList<>(leftOver(across));
    left.addAll(leftOver(down));
    left.sort(Double::compare);
    return left.isEmpty() ? 0 : left.get(left.size() / 2);
  }

  private void take(Level level, Pose pose) {
    projection.set(pose);
    for (int at = 0; at < grey.length; at++) {
      int row = at / SIDE;
      projection.project(at % SIDE / (double) FINE - REACH, row / (double) FINE - REACH);
      grey[at] = level.at(projection.x(), projection.y());
    }
  }

  private void look(Piece piece, float[] want, List<Found> found) {
    double best = SEEN;
    int bestAt = -1;
    int wide = piece.across() ? FAR : 0;
    int high = piece.down() ? FAR : 0;
    int row = 2 * FAR + 1;
    for (int below = -high; below <= high; below++) {
      for (int right = -wide; right <= wide; right++) {
        double fit = fit(piece, want, below * SIDE + right);
        if (fit > best) {
          best = fit;
          bestAt = (below + FAR) * row + right + FAR;
        }
      }
    }
    if (bestAt >= 0) {
      double right = (bestAt % row - FAR) / (double) FINE;
      double below = (bestAt / row - FAR) / (double) FINE;
      found.add(new Found(piece, right, below));
    }
  }

  /** The correlation of a piece with the picture so far beside its place. */
  private double fit(Piece piece, float[] want, int beside) {
    int side = piece.side();
    int count = want.length;
    double sum = 0;
    double squares = 0;
    double wanted = 0;
    double wantedSquares = 0;
    double shared = 0;
    int from = piece.first() + beside;
    for (int at = 0; at < count; at++) {
      int row = at / side;
      float value = grey[from + (row * SIDE + at % side) * FINE / 2];
      sum += value;
      squares += value * value;
      wanted += want[at];
      wantedSquares += want[at] * want[at];
      shared += value * want[at];
    }
    double spread = squares - sum * sum / count;
    double wantedSpread = wantedSquares - wanted * wanted / count;
    return spread < count ? 0 : (shared - sum * wanted / count) / Math.sqrt(spread * wantedSpread);
  }

  /** What an even change of place and size does not account for, of each shift. */
  private static List<Double> leftOver(List<double[]> shifts) {
    double[][] normal = new double[3][3];
    double[] right = new double[3];
    for (double[] shift : shifts) {
      double[] terms = {1, shift[0] / REACH, shift[1] / REACH};
      for (int row = 0; row < 3; row++) {
        right[row] += terms[row] * shift[2];
        for (int column = 0; column <= row; column++) {
          normal[row][column] += terms[row] * terms[column];
        }
      }
    }
    double[] even = new LinearSolver(3).solve(normal, right, 3, 1e-3);
    return shifts.stream()
        .map(
            shift ->
                Math.abs(
                    shift[2] - even[0] - even[1] * shift[0] / REACH - even[2] * shift[1] / REACH))
        .toList();
  }
}
