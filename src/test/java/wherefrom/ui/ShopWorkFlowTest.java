package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.job.SurfaceSizes;
import wherefrom.job.change.Planning;
import wherefrom.parts.Part;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.size.ChangeText;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** A line of the slip asks its kind of work first; counted back, it is the change. */
class ShopWorkFlowTest {
  private final SampleJob sample = SampleJob.apart();

  private SampleWindow visit() {
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(ScreenId.MACHINE_SHOP);
    window.layOut();
    window.press("New visit");
    window.press("Crank, block");
    return window;
  }

  private static void type(SampleWindow window, String figures) {
    for (char digit : figures.toCharArray()) {
      window.press(String.valueOf(digit));
    }
    window.press("Done");
  }

  @Test
  void groundJournalsThatComeBackStopTheOldShells() {
    Toolkit.on(
        () -> {
          SampleWindow window = visit();
          window.pressOnSomePage("Grind the rod journals");
          type(window, "2.2300");
          type(window, "0.0005");
          assertThat(window.words()).contains("1 crankshaft on the slip");
          assertThat(new Planning(sample.job).made()).isEmpty();
          window.pressBelow("Check in");
          window.press("1 × crankshaft");
          type(window, "2.2315");
          assertThat(window.words()).contains("NOT within", "Do not take it home");
          assertThat(new Planning(sample.job).made())
              .containsExactly(
                  ChangeText.read(ChangeKind.ROD_JOURNALS_GROUND, "", "2.2315 in", Unit.INCH));
          return window;
        });
  }

  @Test
  void aHeadIsMilledWhereItIsSaid() {
    Toolkit.on(
        () -> {
          SampleWindow window = visit();
          window.pressOnSomePage("Mill a head");
          window.press("Left");
          type(window, "0.010");
          window.press("Done");
          assertThat(window.words()).contains("1 cylinder heads on the slip");
          return window;
        });
  }

  @Test
  void aNewShellIsAskedForItsSizeAndTheListsComesFirst() {
    new Planning(sample.job)
        .make(ChangeText.read(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in", Unit.INCH));
    Part old = sample.part("rod-shell@R3U");
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(ScreenId.PART, old.item());
          window.layOut();
          window.press("More");
          window.pressOnSomePage("A new part instead");
          // What stands against the old one says why: it is not asked.
          assertThat(window.words())
              .contains("Size of the new part", "As the list says", "0.010 in under (ten under)");
          window.press("As the list says");
          return window;
        });
    int fresh = sample.part("rod-shell@R3U").item();
    assertThat(fresh).isNotEqualTo(old.item());
    assertThat(new SurfaceSizes(sample.job.state()).findSizeOf(fresh).orElseThrow().text())
        .isEqualTo("0.010 in");
  }
}
