package wherefrom.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.match.AcceptanceBound;
import wherefrom.scan.match.ClosedSetMatcher;
import wherefrom.scan.match.IssuedSymbols;
import wherefrom.scan.match.SymbolMatch;

/**
 * What is made of a still picture on which nothing was read: the grids that were looked at are
 * asked once more, for the tags that other jobs printed. No place is searched again.
 */
final class OtherJobs {
  private final IssuedSymbols printed;
  private final ClosedSetMatcher matcher;

  /**
   * @param printed by the other jobs, what the open one printed in it as not issued
   */
  OtherJobs(IssuedSymbols printed) {
    this.printed = printed;
    matcher = new ClosedSetMatcher(printed);
  }

  /** Each place that says one of their tags, once. */
  List<PoseReading> readings(List<PoseReading> asked) {
    List<PoseReading> read = new ArrayList<>();
    for (PoseReading reading : asked) {
      if (reading.pattern() >= AcceptanceBound.PATTERN
          && read.stream().noneMatch(one -> isSpot(one.pose(), reading.pose()))) {
        find(reading).ifPresent(read::add);
      }
    }
    return read;
  }

  private Optional<PoseReading> find(PoseReading reading) {
    Optional<SymbolMatch> match = matcher.find(reading.grid());
    return match
        .filter(best -> AcceptanceBound.acceptsAmong(best, reading.pattern(), printed.issued()))
        .map(
            best ->
                new PoseReading(
                    reading.pose(),
                    reading.pattern(),
                    reading.grid(),
                    Optional.of(new PoseReading.Text(best.code().digits(), false)),
                    match));
  }

  private static boolean isSpot(Pose one, Pose other) {
    double x = one.centreX() - other.centreX();
    double y = one.centreY() - other.centreY();
    return Math.hypot(x, y) < Pose.HALF * Math.max(one.module(), other.module());
  }
}
