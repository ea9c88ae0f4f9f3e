package wherefrom.workings.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The referee: lobes of many shapes whose opening, closing, duration and centre are known, read in
 * steps of 2° to 30° with a wheel, a dial and a zero that are off by chance. The true value must
 * lie within twice the stated standard uncertainty in at least 95 % of the cases (JCGM 100:2008,
 * G.6.6), and with fine steps the band must stay as narrow as what the tools alone leave open.
 */
class LobeSimulationTest {
  private static final double WHEEL = 0.25;
  private static final double DIAL = 0.0005;
  private static final double ZERO = 0.5;
  private static final double THIRD = 1 / Math.sqrt(3);

  private enum What {
    OPENING,
    CLOSING,
    DURATION,
    /** The nose, which many cards call the centre line. */
    NOSE,
    /** Midway between the events, which others call so. */
    BETWEEN_EVENTS
  }

  /** How often each value lay within the band, and how wide the bands were. */
  private static final class Tally {
    private final Map<What, int[]> within = new EnumMap<>(What.class);
    private final List<Double> durations = new ArrayList<>();
    private final List<Double> centres = new ArrayList<>();
    private int fitted;

    void add(SimulatedLobe lobe, double stated, LobeTiming timing) {
      fitted++;
      count(What.OPENING, timing.opening(), lobe.opening(stated));
      count(What.CLOSING, timing.closing(), lobe.closing(stated));
      count(What.DURATION, timing.duration(), lobe.closing(stated) - lobe.opening(stated));
      count(What.NOSE, timing.centreLine(), lobe.nose());
      double between = (lobe.opening(stated) + lobe.closing(stated)) / 2;
      count(What.BETWEEN_EVENTS, timing.centreLine(), between);
      durations.add(timing.duration().standardUncertainty());
      centres.add(timing.middleOnWheel().standardUncertainty());
    }

    private void count(What what, AngleValue found, double truth) {
      int[] counts = within.computeIfAbsent(what, any -> new int[1]);
      if (Math.abs(found.degrees() - truth) <= 2 * found.standardUncertainty()) {
        counts[0]++;
      }
    }

    double share(What what) {
      return (double) within.get(what)[0] / fitted;
    }

    static double median(List<Double> all) {
      return all.stream().sorted().skip(all.size() / 2).findFirst().orElseThrow();
    }
  }

  private static LobeReadings read(SimulatedLobe lobe, double step, SplittableRandom random) {
    double zero = ZERO * (2 * random.nextDouble() - 1);
    List<DialReading> readings = new ArrayList<>();
    double at = lobe.seat(-1) - step * random.nextDouble();
    for (; at <= lobe.seat(1) + step; at += step) {
      double wheel = at + zero + WHEEL * (2 * random.nextDouble() - 1);
      double dial = DIAL * (2 * random.nextDouble() - 1);
      readings.add(new DialReading(at, lobe.lift(wheel) + dial));
    }
    return new LobeReadings(readings, WHEEL * THIRD, DIAL * THIRD, ZERO * THIRD);
  }

  private static Tally tally(boolean equal, double step, int runs) {
    SplittableRandom random = new SplittableRandom(Math.round(step) * 2 + (equal ? 1 : 0));
    Tally tally = new Tally();
    for (int run = 0; run < runs; run++) {
      SimulatedLobe lobe = SimulatedLobe.draw(equal, random);
      double stated = 0.030 + 0.040 * random.nextDouble();
      LobeAnswer answer = LobeFit.fit(read(lobe, step, random), stated);
      if (answer instanceof LobeAnswer.Fitted fitted) {
        tally.add(lobe, stated, fitted.timing());
      }
    }
    return tally;
  }

  @ParameterizedTest
  @CsvSource({"2, 60", "5, 200", "10, 300", "15, 300", "20, 300", "25, 300", "30, 300"})
  void theTruthLiesWithinTwiceTheBand(double step, int runs) {
    for (boolean equal : new boolean[] {true, false}) {
      Tally tally = tally(equal, step, runs);
      for (What what : What.values()) {
        assertThat(tally.share(what))
            .as("%s of %s flanks in steps of %s deg", what, equal ? "equal" : "unequal", step)
            .isGreaterThanOrEqualTo(0.95);
      }
      if (step <= 10) {
        // Wheel and dial alone: √(0.25² + (0.0005/0.003)²)/√3 at each event, so 0.24° for both.
        assertThat(Tally.median(tally.durations)).isLessThan(0.30);
      }
      if (step <= 10 && equal) {
        assertThat(Tally.median(tally.centres)).isLessThan(0.10);
      }
    }
  }
}
