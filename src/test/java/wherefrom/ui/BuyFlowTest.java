package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Decision;
import wherefrom.job.PartRecord;
import wherefrom.job.decide.Deciding;
import wherefrom.job.money.BuyLine;
import wherefrom.job.money.Buying;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.ui.app.Typable;
import wherefrom.ui.decide.BuyScreen;
import wherefrom.ui.decide.GoodsScreen;
import wherefrom.ui.sample.PaperLogbook.Away;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** What came is scanned by the number on its box, measured and judged, in the window. */
class BuyFlowTest {
  private final SampleJob sample = SampleJob.apart();

  private BuyLine lifters() {
    return new Buying(sample.job.state())
        .lines().stream()
            .filter(line -> line.words().contains("lifters"))
            .findFirst()
            .orElseThrow();
  }

  private SampleWindow buying() {
    List<Integer> lifters =
        sample.job.state().parts().stream()
            .map(PartRecord::part)
            .filter(part -> part.kind() == PartKind.LIFTER)
            .map(Part::item)
            .toList();
    new Deciding(sample.job).decide(lifters, Decision.REPLACE, "worn");
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(sample.job);
    window.shell.context().navigator().open(() -> new BuyScreen(window.shell.context()));
    window.layOut();
    return window;
  }

  private static void type(SampleWindow window, String letter) {
    ((Typable) window.shell.context().navigator().current()).type(letter);
  }

  private static void number(SampleWindow window, String digits) {
    digits.chars().forEach(each -> window.pressExactly(Character.toString(each)));
    window.press("Done");
  }

  @Test
  void aBoxIsScannedMeasuredAndCounted() {
    Toolkit.on(
        () -> {
          SampleWindow window = buying();
          window.scan("4006381333931");
          assertThat(window.shell.current().title()).isEqualTo("What was scanned");
          assertThat(window.words())
              .contains("NOT ON THE LIST", "Wrong: no line has number 4006381333931.");
          window.press("OK");
          window.pressOnSomePage("16 lifters");
          window.pressOnSomePage("Buy 1 set of 16");
          window.pressOnSomePage("Number on the box");
          "4006381333931".chars().forEach(each -> type(window, Character.toString(each)));
          window.press("Done");
          assertThat(window.words()).contains("Scan the box when it comes.");
          window.scan("4006381333931");
          window.layOut();
          window.press("All 16");
          window.press("Measured: diameter");
          number(window, "0.8425");
          number(window, "0.842");
          number(window, "0.001");
          window.press("A caliper");
          assertThat(window.words()).contains("Undecided: diameter 0.8425 in");
          window.press("No, it is wrong");
          assertThat(lifters().arrived()).isZero();
          window.scan("4006381333931");
          window.layOut();
          window.press("All 16");
          window.press("Measured: diameter");
          number(window, "0.842");
          number(window, "0.003");
          window.press("A caliper");
          assertThat(window.words()).contains("Right: diameter 0.842 in", "16 of 16 here");
          assertThat(lifters().arrived()).isEqualTo(16);
          return window;
        });
  }

  @Test
  void aTagIsNoNumberOnABox() {
    Toolkit.on(
        () -> {
          SampleWindow window = buying();
          window.scan(sample.part("lifter@3IN").code(sample.job.state().engine()).digits());
          assertThat(window.words()).contains("Scan the number on the box");
          assertThat(lifters().arrived()).isZero();
          return window;
        });
  }

  /** What waits to be sent is done; asked for again, it would be counted twice. */
  @Test
  void whatWaitsForTheServerIsNotAskedForAgain() {
    SampleWindow window =
        Toolkit.on(
            () -> {
              SampleWindow buying = buying();
              buying.pressOnSomePage("16 lifters");
              buying.pressOnSomePage("Buy 1 set of 16");
              buying.press("Check in what came");
              number(buying, "16");
              buying.press("Only read off the box");
              sample.logbook.away(Away.UNSENT);
              buying.press("Yes, it is right");
              assertThat(buying.shell.message()).endsWith("sent again when it is back.");
              assertThat(buying.shell.current()).isInstanceOf(GoodsScreen.class);
              assertThat(lifters().arrived()).isZero();
              return buying;
            });
    Toolkit.on(
        () -> {
          sample.logbook.away(Away.NO);
          return 0;
        });
    Toolkit.on(
        () -> {
          assertThat(lifters().arrived()).isEqualTo(16);
          assertThat(window.shell.current()).isInstanceOf(GoodsScreen.class);
          return 0;
        });
  }

  /** A wrong figure is mended where it stands; a count of none is not asked about any further. */
  @Test
  void aWrongFigureIsRefusedInItsOwnStep() {
    Toolkit.on(
        () -> {
          SampleWindow window = buying();
          window.pressOnSomePage("16 lifters");
          window.pressOnSomePage("Buy 1 set of 16");
          window.press("Check in what came");
          window.press("Done");
          assertThat(window.shell.message()).isEqualTo("Type how many first: 1 or more.");
          number(window, "0");
          assertThat(window.shell.message()).isEqualTo("Type how many first: 1 or more.");
          window.press("Clear all");
          number(window, "16");
          window.press("Measured: diameter");
          number(window, "0");
          assertThat(window.words()).contains("What does one of them measure?");
          assertThat(window.shell.message()).startsWith("A size is more than 0.");
          window.press("Erase");
          number(window, "0.842");
          number(window, "8.42");
          assertThat(window.words()).contains("What must it measure?");
          assertThat(window.shell.message()).contains("too far apart");
          return window;
        });
  }
}
