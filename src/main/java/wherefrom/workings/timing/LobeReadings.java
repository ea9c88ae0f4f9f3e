package wherefrom.workings.timing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wherefrom.workings.maths.WheelAngle;

/**
 * The readings over one lobe with the uncertainties they were taken with.
 *
 * @param readings at any spacing, over the whole of both flanks
 * @param angleUncertainty standard uncertainty of reading the wheel, in degrees
 * @param liftUncertainty standard uncertainty of the dial, in the unit of the lifts
 * @param centreUncertainty standard uncertainty of the wheel's zero at top dead centre, in degrees
 */
public record LobeReadings(
    List<DialReading> readings,
    double angleUncertainty,
    double liftUncertainty,
    double centreUncertainty) {
  public static final int LEAST = 9;

  /**
   * Brings every reading onto the turn of the highest one, and that one next to top dead centre, as
   * 350° on a wheel is −10°; then sorts them by angle.
   */
  public LobeReadings {
    double nose =
        readings.stream()
            .max(Comparator.comparingDouble(DialReading::lift))
            .map(highest -> WheelAngle.near(highest.degrees(), 0))
            .orElse(0.0);
    readings =
        readings.stream()
            .map(each -> new DialReading(WheelAngle.near(each.degrees(), nose), each.lift()))
            .sorted(Comparator.comparingDouble(DialReading::degrees))
            .toList();
  }

  /** What keeps the readings from being fitted, as a sentence; empty where nothing does. */
  public Optional<String> findFault(double checkingLift) {
    if (readings.size() < LEAST) {
      return Optional.of("Take at least " + LEAST + " readings, over both flanks of the lobe.");
    }
    if (angleUncertainty < 0 || liftUncertainty < 0 || centreUncertainty < 0) {
      return Optional.of("An uncertainty cannot be negative.");
    }
    for (int i = 1; i < readings.size(); i++) {
      if (readings.get(i).degrees() <= readings.get(i - 1).degrees()) {
        return Optional.of(
            "Two readings stand at "
                + readings.get(i).degrees()
                + " deg. A whole turn is the same mark. Keep one of them.");
      }
    }
    return findFlankFault(checkingLift);
  }

  private Optional<String> findFlankFault(double checkingLift) {
    int top = top();
    double least = LobeEvents.LOW * readings.get(top).lift();
    double start = readings.get(0).lift();
    double end = readings.get(readings.size() - 1).lift();
    if (top == 0 || top == readings.size() - 1 || start > least || end > least) {
      return Optional.of(
          "The readings do not reach down both flanks. Go on until the dial is near its zero.");
    }
    if (checkingLift <= Math.max(start, end) || checkingLift >= readings.get(top).lift()) {
      return Optional.of(
          "The checking lift is outside the readings. It must be between the dial's"
              + " lowest and highest reading, on both flanks.");
    }
    return Optional.empty();
  }

  /** The index of the largest lift. */
  int top() {
    int top = 0;
    for (int i = 1; i < readings.size(); i++) {
      top = readings.get(i).lift() > readings.get(top).lift() ? i : top;
    }
    return top;
  }

  double[] angles() {
    return readings.stream().mapToDouble(DialReading::degrees).toArray();
  }

  double[] lifts() {
    return readings.stream().mapToDouble(DialReading::lift).toArray();
  }
}
