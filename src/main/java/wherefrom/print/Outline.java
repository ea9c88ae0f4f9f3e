package wherefrom.print;

import java.util.ArrayList;
import java.util.Arrays;
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

  /** Edges not walked yet, one array for each direction, by the corner they start from. */
  private final boolean[][] edges = new boolean[4][ACROSS * ACROSS];

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
          edges[0][corner] = !modules.dark(row - 1, column);
          edges[1][corner + 1] = !modules.dark(row, column + 1);
          edges[2][corner + ACROSS + 1] = !modules.dark(row + 1, column);
          edges[3][corner + ACROSS] = !modules.dark(row, column - 1);
        }
      }
    }
  }

  private List<int[]> walk() {
    List<int[]> loops = new ArrayList<>();
    for (int start = 0; start < edges[0].length; start++) {
      if (edges[0][start]) {
        loops.add(loop(start));
      }
    }
    return loops;
  }

  /** Walks from a top left corner to the right and on until it is closed. */
  private int[] loop(int start) {
    int[] points = new int[16];
    int used = 0;
    int at = start;
    int direction = 0;
    do {
      if (used == points.length) {
        points = Arrays.copyOf(points, 2 * used);
      }
      points[used++] = at % ACROSS;
      points[used++] = at / ACROSS;
      while (edges[direction][at]) {
        edges[direction][at] = false;
        at += STEP[direction];
      }
      direction = turn(at, direction);
    } while (at != start);
    return Arrays.copyOf(points, used);
  }

  private int turn(int at, int direction) {
    int right = (direction + 1) % 4;
    return edges[right][at] ? right : (direction + 3) % 4;
  }
}
