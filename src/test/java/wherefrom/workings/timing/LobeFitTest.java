package wherefrom.workings.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LobeFitTest {
  private static final double FULL = 0.300;
  private static final double HALF_WIDTH = 140;

  /** A lobe of known middle: full lift times the square of a cosine, 280° from seat to seat. */
  private static double lift(double degrees, double middle) {
    double off = degrees - middle;
    if (Math.abs(off) >= HALF_WIDTH) {
      return 0;
    }
    double cosine = Math.cos(Math.PI / 2 * off / HALF_WIDTH);
    return FULL * cosine * cosine;
  }

  /** Half the duration at a lift, from the same formula turned round. */
  private static double halfDuration(double lift) {
    return HALF_WIDTH * 2 / Math.PI * Math.acos(Math.sqrt(lift / FULL));
  }

  private static LobeReadings readings(
      double middle, double step, double angleU, double liftU, Random random) {
    List<DialReading> readings = new ArrayList<>();
    for (double a = middle - 150.3; a <= middle + 150; a += step) {
      double wheel = a + angleU * random.nextGaussian();
      readings.add(new DialReading(a, lift(wheel, middle) + liftU * random.nextGaussian()));
    }
    return new LobeReadings(readings, angleU, liftU, 0.3);
  }

  private static LobeTiming fit(LobeReadings readings, double checkingLift) {
    LobeAnswer answer = LobeFit.fit(readings, checkingLift);
    assertThat(answer).isInstanceOf(LobeAnswer.Fitted.class);
    return ((LobeAnswer.Fitted) answer).timing();
  }

  @Test
  void findsTheMiddleAndTheEventsOfAKnownLobe() {
    for (double middle : new double[] {-112.5, 0, 106.25, 110}) {
      LobeTiming timing = fit(readings(middle, 5, 0, 0, new Random(1)), 0.050);
      assertThat(timing.centreLine().degrees()).isCloseTo(middle, within(0.02));
      assertThat(timing.opening().degrees()).isCloseTo(middle - halfDuration(0.050), within(0.001));
      assertThat(timing.closing().degrees()).isCloseTo(middle + halfDuration(0.050), within(0.001));
      assertThat(timing.duration().degrees()).isCloseTo(2 * halfDuration(0.050), within(0.001));
      assertThat(timing.flanks().lean()).isCloseTo(0, within(0.1));
      // Exact readings leave open only what lies between them.
      assertThat(timing.duration().standardUncertainty()).isBetween(1e-9, 0.01);
      assertThat(timing.centreLine().standardUncertainty()).isCloseTo(0.3, within(0.001));
    }
  }

  @Test
  void theBandHoldsWhatRepeatedReadingsScatter() {
    // The referee: 250 lobes measured anew with random errors; the scatter of the results is the
    // band, within the scatter's own error of 1/√(2·250), five times over.
    Random random = new Random(2);
    int runs = 250;
    double[] sums = new double[3];
    double[] bands = new double[3];
    for (int i = 0; i < runs; i++) {
      LobeTiming timing = fit(readings(108, 5, 0.25, 0.0005, random), 0.050);
      double[] off = {
        timing.middleOnWheel().degrees() - 108,
        timing.openingOnWheel().degrees() - (108 - halfDuration(0.050)),
        timing.duration().degrees() - 2 * halfDuration(0.050)
      };
      double[] u = {
        timing.middleOnWheel().standardUncertainty(),
        timing.openingOnWheel().standardUncertainty(),
        timing.duration().standardUncertainty()
      };
      for (int k = 0; k < 3; k++) {
        sums[k] += off[k] * off[k];
        bands[k] += u[k] * u[k];
      }
    }
    for (int k = 0; k < 3; k++) {
      double ratio = Math.sqrt(sums[k] / bands[k]);
      assertThat(ratio).as("scatter over band of value %d", k).isBetween(0.776, 1.224);
    }
  }

  @Test
  void fittingBeatsOnePointOnTheNose() {
    Random random = new Random(3);
    double fitted = 0;
    double pointed = 0;
    for (int i = 0; i < 100; i++) {
      LobeReadings readings = readings(108, 5, 0.25, 0.0005, random);
      fitted += Math.pow(fit(readings, 0.050).centreLine().degrees() - 108, 2);
      pointed += Math.pow(readings.readings().get(readings.top()).degrees() - 108, 2);
    }
    assertThat(Math.sqrt(fitted / 100)).isLessThan(0.15);
    assertThat(fitted).isLessThan(pointed / 25);
  }

  @Test
  void aLeaningLobeSaysSo() {
    List<DialReading> readings = new ArrayList<>();
    for (double a = -40; a <= 262; a += 4) {
      double lift = lift(a, 110);
      readings.add(new DialReading(a + 10 * lift / FULL, lift));
    }
    LobeTiming timing = fit(new LobeReadings(readings, 0, 0, 0), 0.050);
    // Every point was shifted by 10° times its part of the full lift; used are 0.2 to 0.8 of it.
    assertThat(timing.flanks().lean()).isCloseTo(6, within(0.5));
  }

  @Test
  void overlapOfATrainingManual() {
    // TM 9-8000, valve overlap, Fig 2-55: intake opens 28° before, exhaust closes 45° after top
    // dead centre: 73° of overlap. Fig 2-54: a duration of 279°.
    ValveTiming timing = new ValveTiming(timing(-28, 251, 111.5, 0.4), timing(-220, 45, -110, 0.4));
    assertThat(timing.overlap().degrees()).isCloseTo(73, within(1e-12));
    assertThat(timing.overlap().standardUncertainty()).isCloseTo(0.2 * Math.sqrt(2), within(1e-12));
    assertThat(timing.intake().duration().degrees()).isEqualTo(279);
    assertThat(timing.lobeSeparation().degrees()).isCloseTo(110.75, within(1e-12));
    assertThat(timing.advance().degrees()).isCloseTo(-0.75, within(1e-12));
    assertThat(Event.words(-28)).isEqualTo("28.0 deg before top dead center");
    assertThat(Event.words(45)).isEqualTo("45.0 deg after top dead center");
    assertThat(Event.words(251)).isEqualTo("71.0 deg after bottom dead center");
    assertThat(Event.words(-220)).isEqualTo("40.0 deg before bottom dead center");
  }

  private static LobeTiming timing(double opens, double closes, double middle, double zero) {
    return new LobeTiming(
        0.050,
        new AngleValue(opens, 0.2),
        new AngleValue(closes, 0.2),
        new AngleValue(middle, 0.1),
        new AngleValue(closes - opens, 0.28),
        new LobeTiming.Flanks(0.06, 0.24, 0),
        zero);
  }

  /** A wheel numbered 0 to 360: the intake opens at 328, the exhaust closes at 42. */
  @Test
  void readingsOverTheWheelsZeroAreOneLobe() {
    for (double middle : new double[] {108, -112, 20}) {
      LobeReadings typed = readings(middle, 5, 0.1, 0.0002, new Random(5));
      LobeTiming plain = fit(typed, 0.050);
      for (double turn : new double[] {0, 360, 720}) {
        List<DialReading> marks =
            typed.readings().stream()
                .map(it -> new DialReading((it.degrees() + turn) % 360, it.lift()))
                .map(it -> new DialReading((it.degrees() + 360) % 360, it.lift()))
                .toList();
        LobeTiming marked = fit(new LobeReadings(marks, 0.1, 0.0002, 0.3), 0.050);
        assertThat(marked.centreLine().degrees())
            .isCloseTo(plain.centreLine().degrees(), within(1e-6));
        assertThat(marked.opening().degrees()).isCloseTo(plain.opening().degrees(), within(1e-6));
        assertThat(marked.duration().degrees()).isCloseTo(plain.duration().degrees(), within(1e-6));
      }
    }
  }

  @Test
  void theLiftsBetweenWhichTheMiddleIsTakenAreSaid() {
    LobeTiming timing = fit(readings(108, 2, 0, 0, new Random(6)), 0.050);
    assertThat(timing.flanks().from()).isCloseTo(0.2 * FULL, within(0.0002));
    assertThat(timing.flanks().to()).isCloseTo(0.8 * FULL, within(0.0002));
  }

  @Test
  void readingsThatCannotBeFittedAreRefusedWithASentence() {
    LobeReadings good = readings(108, 10, 0, 0, new Random(4));
    assertThat(refusal(new LobeReadings(good.readings().subList(0, 6), 0, 0, 0), 0.05))
        .contains("at least 9");
    assertThat(refusal(new LobeReadings(good.readings().subList(0, 18), 0, 0, 0), 0.05))
        .contains("both flanks");
    assertThat(refusal(good, 0.4)).contains("checking lift");
    assertThat(refusal(good, 0)).contains("checking lift");
    List<DialReading> twice = new ArrayList<>(good.readings());
    twice.add(good.readings().get(5));
    assertThat(refusal(new LobeReadings(twice, 0, 0, 0), 0.05)).contains("Two readings");
    assertThat(refusal(new LobeReadings(good.readings(), -1, 0, 0), 0.05)).contains("negative");
  }

  private static String refusal(LobeReadings readings, double checkingLift) {
    return ((LobeAnswer.Unfit) LobeFit.fit(readings, checkingLift)).sentence();
  }
}
