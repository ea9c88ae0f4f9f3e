package wherefrom.workings.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.Inputs;
import wherefrom.workings.Result;

/** There and back again, on seeded inputs. */
class RoundTripTest {
  private static final int RUNS = 1_000;

  private static Inputs space(Random random) {
    return Samples.all().stream()
        .filter(sample -> sample.key().equals("compression-ratio"))
        .findFirst()
        .orElseThrow()
        .draw(random);
  }

  private static Result run(String key, Inputs inputs) {
    return (Result) Workings.find(key).orElseThrow().compute(inputs);
  }

  @Test
  void chamberForTheRatioOfAChamberIsThatChamber() {
    Random random = new Random(11);
    for (int i = 0; i < RUNS; i++) {
      Inputs inputs = space(random);
      double ratio = run("compression-ratio", inputs).getValue("ratio").value();
      Result back = run("chamber-for-ratio", inputs.with("target", Amount.of(ratio, Unit.ONE)));
      double chamber =
          inputs.findMeasured("chamber").orElseThrow().value().in(Unit.CUBIC_CENTIMETRE);
      assertThat(back.getValue("chamber").value()).isCloseTo(chamber, within(1e-9));
      assertThat(back.getValue("remove").value()).isCloseTo(0, within(1e-9));
    }
  }

  @Test
  void deckCutBringsTheRatioItWasAskedFor() {
    Random random = new Random(12);
    for (int i = 0; i < RUNS; i++) {
      Inputs inputs = space(random);
      double ratio = run("compression-ratio", inputs).getValue("ratio").value() + 0.3;
      Result cut = run("deck-cut", inputs.with("target", Amount.of(ratio, Unit.ONE)));
      Inputs after = inputs.with("deck", cut.getValue("deck").amount());
      assertThat(run("compression-ratio", after).getValue("ratio").value())
          .isCloseTo(ratio, within(1e-9));
    }
  }

  @Test
  void headCutBringsTheRatioItWasAskedFor() {
    Random random = new Random(13);
    Amount opening = Amount.of("6.500", Unit.CC_PER_MILLIMETRE);
    for (int i = 0; i < RUNS; i++) {
      Inputs inputs = space(random);
      double ratio = run("compression-ratio", inputs).getValue("ratio").value() + 0.3;
      Amount wanted =
          run("chamber-for-ratio", inputs.with("target", Amount.of(ratio, Unit.ONE)))
              .getValue("chamber")
              .amount();
      Amount now = inputs.findMeasured("chamber").orElseThrow().value();
      Result cut =
          run(
              "head-cut",
              Inputs.empty()
                  .with("chamber-now", now)
                  .with("chamber-wanted", wanted)
                  .with("opening", opening));
      Inputs after =
          inputs
              .with("opening", opening)
              .with("head-cut", cut.getValue("cut").amount())
              .with("deck-cut", Amount.of(BigDecimal.ZERO.toPlainString(), Unit.INCH));
      assertThat(run("ratio-after-cut", after).getValue("ratio").value())
          .isCloseTo(ratio, within(1e-9));
    }
  }

  @Test
  void equalAmountsInInchAndMillimetreLeaveNothing() {
    assertThat(
            Ask.value(
                "change",
                "pushrod-length",
                "base-radius-loss=0.254mm",
                "lowering=0.010in",
                "pushrod-tilt=0deg",
                "tip-rise=0in",
                "rocker-ratio=1.5"))
        .isZero();
  }

  @Test
  void inchAndMillimetreInputsAgreeToTheLastDigit() {
    double inch =
        Ask.value("cylinder", "swept-volume", "bore=4.000in", "stroke=3.5in", "cylinders=8");
    double metric =
        Ask.value("cylinder", "swept-volume", "bore=101.6mm", "stroke=88,9mm", "cylinders=8");
    assertThat(metric / inch).isCloseTo(16.387064, within(1e-14));
    double clearance =
        Ask.value("clearance", "oil-clearance-bore", "inside=62.2548mm", "journal=2.449in");
    assertThat(clearance).isEqualTo(0.0502);
  }
}
