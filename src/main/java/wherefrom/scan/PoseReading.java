package wherefrom.scan;

import java.util.Optional;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.grid.SoftGrid;
import wherefrom.scan.match.SymbolMatch;

/**
 * What the grid at one refined pose says.
 *
 * @param pattern fit of the pattern of every label, to 1
 * @param text sixteen digits that can be believed, if any
 * @param match the closest issued symbol, believed or not
 */
record PoseReading(
    Pose pose, double pattern, SoftGrid grid, Optional<Text> text, Optional<SymbolMatch> match) {

  /** Digits and how they were come by. */
  record Text(String digits, boolean issued) {}
}
