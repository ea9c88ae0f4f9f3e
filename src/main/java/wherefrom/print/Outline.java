package wherefrom.print;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * The outlines of the dark areas of a symbol, to be filled by the even-odd rule as one path: with
 * no edges inside an area no renderer can leave hairlines there.
 */
final class Outline {
  private static final int ACROSS = Modules.WIDTH + 1;

  /** Right, down, left, up. */
  private static final int[] STEP = {1, ACROSS, -1, -ACROSS};

  private final Modules modules;

  /** Edges not walked yet, by the corner they start from, one set for each direction. */
  private final BitSet[] edges = {new BitSet(), new BitSet(), new BitSet(), new BitSet()};

  private Outline(Modules modules) {
    this.modules = modules;
  }

  /** The closed outlines, each as its corners {@code x, y, x, y…} in modules from the top left. */
  static List<int[]> of(Modules modules) {
    Outline outline = new Outline(modules);
    outline.markEdges();
    return outline.walk();
  }

  /** An edge has its dark module on the right-hand side of the way along it. */
  private void markEdges() {
    for (int row = 0; row < Modules.WIDTH; row++) {
      for (int column = 0; column < Modules.WIDTH; column++) {
        if (modules.dark(row, column)) {
          int corner = row * ACROSS + column;
          edges[0].set(corner, !modules.dark(row - 1, column));
          edges[1].set(corner + 1, !modules.dark(row, column + 1));
          edges[2].set(corner + ACROSS + 1, !modules.dark(row + 1, column));
          edges[3].set(corner + ACROSS, !modules.dark(row, column - 1));
        }
      }
    }
  }

  private List<int[]> walk() {
    List<int[]> loops = new ArrayList<>();
    int start = edges[0].nextSetBit(0);
    while (start >= 0) {
      loops.add(loop(start));
      start = edges[0].nextSetBit(start);
    }
    return loops;
  }

  /** Walks from a top left corner to the right and on until it is closed. */
  private int[] loop(int start) {
    List<Integer> corners = new ArrayList<>();
    int at = start;
    int direction = 0;
    do {
      corners.add(at);
      while (edges[direction].get(at)) {
        edges[direction].clear(at);
        at += STEP[direction];
      }
      direction = turn(at, direction);
    } while (at != start);
    int[] points = new int[2 * corners.size()];
    for (int corner = 0; corner < corners.size(); corner++) {
      points[2 * corner] = corners.get(corner) % ACROSS;
      points[2 * corner + 1] = corners.get(corner) / ACROSS;
    }
    return points;
  }

  private int turn(int at, int direction) {
    int right = (direction + 1) % 4;
    return edges[right].get(at) ? right : (direction + 3) % 4;
  }
}
