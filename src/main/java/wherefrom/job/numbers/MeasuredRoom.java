package wherefrom.job.numbers;

import java.util.Comparator;
import java.util.Optional;
import wherefrom.engine.Spots;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.MeasuredResult;
import wherefrom.job.StaleReadings;
import wherefrom.workings.ResultValue;

/**
 * The least room from piston to valve that was read by degrees, of all valves of a side.
 *
 * @param valve where it was read, such as {@code 3IN}
 * @param value the least by the curve; where that has none between the readings, the smallest of
 *     them, which is the most that the least can be
 */
public record MeasuredRoom(String valve, ResultValue value) {
  private static final String PLAN = "piston-valve";
  private static final String LEAST = "least";

  /** Of what is read of the parts as they are now; empty where nothing is. */
  public static Optional<MeasuredRoom> find(EngineJob job, ValveSide side) {
    StaleReadings stale = new StaleReadings(job);
    return job.measures().listResults(PLAN).stream()
        .filter(result -> isOf(result, side) && !stale.isStale(result))
        .flatMap(result -> room(result).stream())
        .min(Comparator.comparing(room -> room.value().amount().inBase()));
  }

  private static boolean isOf(MeasuredResult result, ValveSide side) {
    return result.subject() instanceof Subject.AFeature at
        && Spots.find(at.where()).filter(ValveSpot.class::isInstance).stream()
            .anyMatch(spot -> ((ValveSpot) spot).side() == side);
  }

  private static Optional<MeasuredRoom> room(MeasuredResult result) {
    String valve = ((Subject.AFeature) result.subject()).where();
    return result
        .findValue(LEAST)
        .or(() -> result.findValue("smallest"))
        .map(value -> new MeasuredRoom(valve, value));
  }

  /** {@code 0.0980 ± 0.0011}; {@code ≤ 0.0800 ± 0.0011} where the least was not found. */
  public String figure() {
    return (value.key().equals(LEAST) ? "" : "≤ ") + value.figure();
  }
}
