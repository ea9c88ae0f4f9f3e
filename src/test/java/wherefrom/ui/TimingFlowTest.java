package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingCheck;
import wherefrom.job.timing.TimingSetting;
import wherefrom.quantity.Unit;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Dial readings over the degree wheel, by touch. */
class TimingFlowTest {
  private static final ValveSpot LOBE = new ValveSpot(1, ValveSide.INTAKE);
  private final SampleJob sample = SampleJob.apart();
  private final SampleWindow window = open();

  private SampleWindow open() {
    SampleWindow fresh = Toolkit.on(() -> new SampleWindow(96, 100));
    return Toolkit.on(
        () -> {
          fresh.shell.context().open(sample.job);
          fresh.shell.context().navigator().show(ScreenId.TIMING);
          fresh.layOut();
          return fresh;
        });
  }

  private void press(String... words) {
    for (String each : words) {
      window.press(each);
    }
  }

  @Test
  void aReadingIsTypedCorrectedTakenOutAndTakenBack() {
    TimingBook book = new TimingBook(sample.job);
    Toolkit.on(
        () -> {
          window.pressOnSomePage("Degree wheel");
          press("Cylinder 1", "Intake readings");
          press("Add", "1", "0", "+/−", "Done", ".", "0", "1", "2", "Done");
          press("Add", "2", "0", "Done", ".", "5", "Done");
          return 0;
        });
    assertThat(book.readings(LOBE)).hasSize(2);
    assertThat(book.readings(LOBE).get(0).degrees().in(Unit.DEGREE)).isEqualTo(-10);
    assertThat(book.readings(LOBE).get(0).lift().text()).isEqualTo("0.012 in");
    Toolkit.on(
        () -> {
          window.pressOnSomePage("20 deg");
          press("Correct the lift", ".", "0", "5", "Done");
          window.pressOnSomePage("−10 deg");
          press("Take it out");
          return 0;
        });
    assertThat(book.readings(LOBE)).hasSize(1);
    assertThat(book.readings(LOBE).get(0).lift().text()).isEqualTo("0.05 in");
    Toolkit.on(
        () -> {
          press("UNDO");
          return 0;
        });
    assertThat(book.readings(LOBE)).hasSize(2);
  }

  @Test
  void whatIsStillOpenIsPressedWhereItIsSaid() {
    TimingBook book = new TimingBook(sample.job);
    Toolkit.on(
        () -> {
          assertThat(window.words()).contains("Next: chain deflection");
          window.pressOnSomePage("Degree wheel");
          press("Cylinder 1");
          assertThat(window.words()).contains("Next: checking lift").doesNotContain("At no");
          press("Next: checking", ".", "0", "5", "Done");
          assertThat(window.words()).contains("Next: wheel reading error");
          press("Wheel reading", "1", "Done", "Dial", ".", "0", "1", "Done");
          press("Next: error of", "1", "Done");
          assertThat(window.words()).contains("Next: intake readings");
          press("Next: intake");
          assertThat(window.words()).contains("Add a reading");
          return 0;
        });
    assertThat(book.find(TimingSetting.STATED_LIFT)).isPresent();
    assertThat(book.find(TimingSetting.ZERO)).isPresent();
  }

  @Test
  void aCardValueStandsBesideWhatWasFound() {
    Toolkit.on(
        () -> {
          TimingShots.read(sample.job);
          window.shell.context().navigator().changed();
          window.layOut();
          window.pressOnSomePage("Cylinder 1");
          window.pressOnSomePage("Exhaust center");
          press("1", "1", "2", "+/−", "Done");
          return 0;
        });
    TimingCheck check = new TimingCheck(new TimingBook(sample.job));
    assertThat(check.timing(1).orElseThrow().exhaust().centreLine().degrees())
        .isCloseTo(-112, within(0.1));
    assertThat(check.compare(1))
        .anyMatch(each -> each.cardWords().contains("112.0 deg before top") && !each.differs());
  }
}
