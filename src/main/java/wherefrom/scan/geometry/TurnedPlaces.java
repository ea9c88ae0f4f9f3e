package wherefrom.scan.geometry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the points of a {@link LabelPattern} lie in all four turns of a tag: many are the same
 * places, so that one look at each serves every turn.
 */
final class TurnedPlaces {
  static final int TURNS = 4;

  /** Of a module; places that lie nearer together are one. */
  private static final double FINE = 1e-6;

  final double[] u;
  final double[] v;

  /** For each turn the place at which each point of the pattern lies. */
  private final int[][] places;

  /**
   * @param pointsU of each point of the pattern, in modules from the symbol's centre to the right
   * @param pointsV of each, down
   */
  TurnedPlaces(double[] pointsU, double[] pointsV) {
    places = new int[TURNS][pointsU.length];
    List<double[]> found = new ArrayList<>();
    Map<List<Long>, Integer> known = new HashMap<>();
    for (int at = 0; at < pointsU.length; at++) {
      double[] place = {pointsU[at], pointsV[at]};
      for (int quarters = 0; quarters < TURNS; quarters++) {
        List<Long> key = List.of(Math.round(place[0] / FINE), Math.round(place[1] / FINE));
        Integer same = known.putIfAbsent(key, found.size());
        places[quarters][at] = same == null ? found.size() : same;
        if (same == null) {
          found.add(place);
        }
        place = new double[] {-place[1], place[0]};
      }
    }
    u = found.stream().mapToDouble(place -> place[0]).toArray();
    v = found.stream().mapToDouble(place -> place[1]).toArray();
  }

  /**
   * Goes over the pattern's points when the tag is turned by quarters clockwise.
   *
   * @param grey of each place
   * @param values of each point, to be filled
   */
  void turn(int quarters, float[] grey, float[] values) {
    int[] from = places[quarters];
    for (int at = 0; at < from.length; at++) {
      values[at] = grey[from[at]];
    }
  }
}
