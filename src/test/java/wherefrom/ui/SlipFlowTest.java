package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.print.PrintOutcome;
import wherefrom.job.shop.MachineShop;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** The slip of a visit goes to the printer from its screen. */
class SlipFlowTest {
  private final SampleJob sample = SampleJob.apart();

  private SampleWindow visit() {
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(ScreenId.MACHINE_SHOP);
    window.layOut();
    return window;
  }

  private static String words(SampleWindow window) {
    return Toolkit.on(() -> window.words());
  }

  private static void press(SampleWindow window, String key) {
    Toolkit.on(
        () -> {
          window.layOut();
          window.press(key);
          return 0;
        });
    settle();
  }

  private static void settle() {
    org.testfx.util.WaitForAsyncUtils.waitForFxEvents();
  }

  @Test
  void theSlipIsPrintedAndNoFileIsLeftBehind() {
    new MachineShop(sample.job)
        .send(1, List.of(sample.part("rod-shell@R3U").item()), "measure the wall");
    SampleWindow window =
        Toolkit.on(
            () -> {
              SampleWindow shown = visit();
              shown.pressOnSomePage("Visit 1");
              shown.pressBelow("Print the slip");
              return shown;
            });
    settle();
    assertThat(words(window)).as("it is looked at first").contains("Page 1 of 3");
    press(window, "Print");
    assertThat(window.services.printedFiles).containsExactly("Launch V8: Machine shop, visit 1");
    assertThat(window.services.reported).hasSize(1);
    assertThat(words(window)).contains("Printed: 1 page.");
    Toolkit.on(
        () -> {
          window.shell.context().navigator().back();
          return 0;
        });
    assertThat(Files.exists(Path.of(window.services.reported.get(0).toString()))).isFalse();
  }

  @Test
  void whyItCannotBePrintedIsSaid() {
    new MachineShop(sample.job).add(1, "block", 1, "bore", "", "", false);
    SampleWindow window =
        Toolkit.on(
            () -> {
              SampleWindow shown = visit();
              shown.services.fileOutcome =
                  new PrintOutcome.Refused(List.of("The system knows no printer."));
              shown.pressOnSomePage("Visit 1");
              shown.pressBelow("Print the slip");
              return shown;
            });
    settle();
    press(window, "Print");
    assertThat(words(window)).contains("The system knows no printer.");
  }

  @Test
  void anEmptyVisitHasNothingToPrint() {
    SampleWindow window =
        Toolkit.on(
            () -> {
              SampleWindow shown = visit();
              shown.press("New visit");
              return shown;
            });
    assertThat(Toolkit.on(() -> window.targets().stream().map(window::words).toList()))
        .contains("Measure runout", "Small parts…")
        .doesNotContain("More", "Check in", "Print the slip…", "Slip as PDF…");
    assertThat(window.services.printedFiles).isEmpty();
  }
}
