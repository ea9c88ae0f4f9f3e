package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.inspection.Subject;
import wherefrom.job.measure.Instruments;
import wherefrom.quantity.Dimension;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.Typable;
import wherefrom.ui.measure.ReadingsScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** What was typed and not yet taken waits where it was typed. */
class NothingTypedIsLostTest {
  private static final String PLAN = "pushrod-length";

  private final SampleJob sample = SampleJob.apart();
  private final Subject rod = Subject.ofPart(sample.part("pushrod@3EX").item());

  private SampleWindow window() {
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(sample.job);
    return window;
  }

  private static void type(SampleWindow window, String figure) {
    Typable pad = (Typable) window.shell.current();
    figure.chars().forEach(each -> pad.type(Character.toString(each)));
    window.layOut();
  }

  private void measure(SampleWindow window) {
    ScreenContext context = window.shell.context();
    context.navigator().open(() -> new ReadingsScreen(context, rod, PLAN));
    window.layOut();
  }

  @Test
  void aFigureThatWasNotTakenWaitsAtItsReading() {
    new Instruments(sample.job).list("caliper", Dimension.LENGTH, "0.0005", "0.001", "0.0005");
    Toolkit.on(
        () -> {
          SampleWindow window = window();
          measure(window);
          type(window, "7.915");
          window.scan(sample.tag("pushrod@5EX"));
          assertThat(window.shell.message()).startsWith("7.915 in was not taken. It waits at ");
          window.layOut();
          window.shell.context().navigator().back();
          measure(window);
          assertThat(window.words()).contains("7.915");
          ((Typable) window.shell.current()).enter();
          window.shell.context().navigator().back();
          return 0;
        });
    assertThat(sample.job.state().measures().findResult(rod, PLAN)).isPresent();
    Toolkit.on(
        () -> {
          SampleWindow window = window();
          measure(window);
          window.press("Measure again");
          assertThat(window.shell.message()).isEmpty();
          return 0;
        });
  }

  @Test
  void aFigureWaitsWhileLettersGetAnotherSize() {
    new Instruments(sample.job).list("caliper", Dimension.LENGTH, "0.0005", "0.001", "0.0005");
    Toolkit.on(
        () -> {
          SampleWindow window = window();
          ScreenContext context = window.shell.context();
          measure(window);
          type(window, "7.915");
          context.change(context.settings().withTextPercent(150));
          window.layOut();
          assertThat(window.words()).contains("7.915");
          return 0;
        });
  }

  /** No pad is up then: digits are no figure that would stand before the next. */
  @Test
  void nothingIsTypedBeforeAToolIsChosen() {
    listTwo();
    Toolkit.on(
        () -> {
          SampleWindow window = window();
          measure(window);
          assertThat(window.words()).contains("Choose the tool");
          assertThat(Typable.of(window.shell.current())).isEmpty();
          window.press("Choose the tool");
          window.press("caliper");
          assertThat(Typable.of(window.shell.current())).isPresent();
          return 0;
        });
  }

  /** Read with another tool it would be another reading. */
  @Test
  void aFigureIsOfTheToolThatItWasTypedFor() {
    listTwo();
    Toolkit.on(
        () -> {
          SampleWindow window = window();
          measure(window);
          window.press("Choose the tool");
          window.press("caliper");
          type(window, "7.915");
          window.press("Tool: caliper");
          window.press("micrometer");
          assertThat(window.words()).doesNotContain("7.915");
          type(window, "7.9");
          assertThat(window.words()).contains("7.9 in").doesNotContain("7.915");
          window.press("Tool: micrometer");
          window.press("caliper");
          assertThat(window.words()).contains("7.915");
          window.press("Tool: caliper");
          window.press("caliper");
          assertThat(window.words()).as("the same tool").contains("7.915");
          return 0;
        });
  }

  private void listTwo() {
    Instruments tools = new Instruments(sample.job);
    tools.list("caliper", Dimension.LENGTH, "0.0005", "0.001", "0.0005");
    tools.list("micrometer", Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
  }

  @Test
  void aTorqueCardThatIsBeingWrittenOutlivesBack() {
    Toolkit.on(
        () -> {
          SampleWindow window = window();
          window.shell.context().navigator().show(ScreenId.TORQUE);
          window.layOut();
          window.press("New torque card");
          window.press("Threads");
          window.press("oiled");
          window.shell.context().navigator().back();
          window.layOut();
          window.press("Go on with the new card");
          assertThat(window.words()).contains("oiled");
          return 0;
        });
  }
}
