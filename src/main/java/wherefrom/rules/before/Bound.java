package wherefrom.rules.before;

import java.util.OptionalDouble;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.accept.Acceptance;
import wherefrom.workings.catalogue.accept.Acceptance.Ruling;

/**
 * A figure that a share is held against.
 *
 * @param percent the figure
 * @param source the person's own, or where it is printed
 */
public record Bound(double percent, String source) {

  /** Accepted at or above it. */
  Ruling atLeast(ResultValue share) {
    return judge(share, OptionalDouble.of(percent), OptionalDouble.empty());
  }

  /** Accepted at or below it. */
  Ruling atMost(ResultValue share) {
    return judge(share, OptionalDouble.empty(), OptionalDouble.of(percent));
  }

  private static Ruling judge(ResultValue share, OptionalDouble low, OptionalDouble high) {
    return new Acceptance(share.value(), share.standardUncertainty(), low, high).decision();
  }
}
