package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.job.PairClearance;
import wherefrom.job.PairClearances;
import wherefrom.job.measure.Instruments;
import wherefrom.job.numbers.Ring;
import wherefrom.job.numbers.RingFiling;
import wherefrom.job.numbers.RingGapRow;
import wherefrom.quantity.Dimension;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** By touch and keys: a lifter in its bore to undecided, a ring from its gap to its tick. */
class FittingTogetherFlowTest {
  private final SampleJob sample = SampleJob.apart();
  private final SampleWindow window = Toolkit.on(() -> new SampleWindow(96, 100));

  private void begin() {
    new Instruments(sample.job).list("MIC", Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
    new Instruments(sample.job).size("bore", "3.8700", "Manual, page 6-3");
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(ScreenId.MEASURE);
    window.layOut();
  }

  private void press(String words) {
    window.moment();
    window.pressBelow(words);
  }

  private void type(String figures) {
    window.layOut();
    figures.chars().forEach(figure -> window.press(Character.toString(figure)));
  }

  private void read(String... sizes) {
    for (String size : sizes) {
      type(size);
      press("Take it");
    }
  }

  private PairClearance lifter() {
    return new PairClearances(sample.job.state())
        .measured().stream()
            .filter(one -> one.pair().key().equals("lifter-to-bore"))
            .findFirst()
            .orElseThrow();
  }

  @Test
  void aLifterIsMeasuredInItsBoreToUndecided() {
    Toolkit.on(
        () -> {
          begin();
          press("Clearances");
          press("Lifter to bore");
          press("Next");
          read("0.8432", "0.8432", "0.8431", "0.8431");
          window.pressRail("Back");
          press("Next");
          press("Choose the tool");
          press("MIC reads");
          read("0.8413", "0.8413", "0.8413", "0.8413");
          window.pressRail("Back");
          press("Type the limit");
          press("Upper limit");
          type("0.0020");
          press("Done");
          press("Common practice");
          assertThat(window.words()).contains("undecided");
          return null;
        });
    assertThat(lifter().sentence()).contains("limit at most 0.0020 in: undecided");
  }

  @Test
  void aRingIsFiledMeasuredAndTicked() {
    Toolkit.on(
        () -> {
          begin();
          press("Clearances");
          press("Ring filing");
          press("Type the wanted gap");
          press("Top ring");
          press("Gap over bore");
          press("0.004 of");
          press("Common practice");
          press("Next");
          press("Measure the gap");
          read("0.0120");
          window.pressRail("Back");
          assertThat(window.words()).contains("File 0.0035 in");
          press("Filed: measure it again");
          read("0.0155");
          window.pressRail("Back");
          press("Tick it: done");
          assertThat(window.words()).contains("1 of 8 done");
          return null;
        });
    assertThat(new RingFiling(sample.job).find("B1", Ring.TOP).orElseThrow().state())
        .isEqualTo(RingGapRow.State.DONE);
  }
}
