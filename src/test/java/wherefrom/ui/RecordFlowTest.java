package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.job.print.PrintOutcome;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** The build record's pages: looked at, turned, printed. */
class RecordFlowTest {
  private final SampleJob sample = SampleJob.apart();
  private final SampleWindow window = Toolkit.on(() -> new SampleWindow(96, 100));

  private void press(String... words) {
    Toolkit.on(
        () -> {
          for (String word : words) {
            window.press(word);
          }
          return 0;
        });
  }

  private String words() {
    return Toolkit.on(window::words);
  }

  private void open() {
    Toolkit.on(
        () -> {
          window.workers = Runnable::run;
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(ScreenId.BUILD_RECORD);
          window.layOut();
          return 0;
        });
  }

  @Test
  void thePagesAreTurnedAndPrinted() {
    open();
    press("Look and print");
    assertThat(words()).contains("Page 1 of 3");
    press("Down", "Down");
    assertThat(words()).contains("Page 3 of 3");
    press("Up");
    assertThat(words()).contains("Page 2 of 3");
    press("Print");
    assertThat(window.services.printedFiles).hasSize(1);
    assertThat(window.services.printedFiles.get(0)).endsWith("Build record");
    assertThat(words()).contains("Printed: 1 page.");
  }

  @Test
  void whatThePrinterRefusesIsSaid() {
    open();
    window.services.fileOutcome = new PrintOutcome.Cancelled();
    press("Look and print", "Print");
    assertThat(words()).contains("Not printed.");
  }

  @Test
  void aBenchSheetIsChosenWithItsPaper() {
    open();
    press("Bench sheets", "Rack plan", "A3");
    assertThat(words()).contains("Rack plan", "Page 1 of 3");
    press("Print");
    assertThat(window.services.printedFiles.get(0)).endsWith("Rack plan");
  }
}
