package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Section;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.StandingRule;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.PartOut;
import wherefrom.job.puttogether.FirstStart;
import wherefrom.job.puttogether.ToFit;
import wherefrom.job.record.BuildRecord;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.before.HeardScreen;
import wherefrom.ui.before.SignsScreen;
import wherefrom.ui.decide.BuyScreen;
import wherefrom.ui.inspect.CardScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/**
 * Whole rebuilds of a V8 in the window, from the symptom to the list before the first start. What
 * is done the same way each time (parts out, checks answered) is recorded; {@code WholeRunTest}
 * does it by hand.
 */
class RebuildScenariosTest {
  private static final Set<PartKind> WITH_VALVES = valves();

  private SampleJob sample = SampleJob.whole();

  private static Set<PartKind> valves() {
    Set<PartKind> kinds = EnumSet.copyOf(PartKind.alwaysOn());
    kinds.add(PartKind.VALVE);
    return kinds;
  }

  private SampleWindow open() {
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(sample.job);
    window.layOut();
    return window;
  }

  private void show(SampleWindow window, ScreenId screen) {
    window.shell.context().navigator().show(screen);
    window.layOut();
  }

  private void show(SampleWindow window, Screen screen) {
    window.shell.context().navigator().open(() -> screen);
    window.layOut();
  }

  private void debris(SampleWindow window, String place, String look) {
    show(window, ScreenId.BENCH_MAP);
    window.press("Debris");
    window.press(place);
    window.pressOnSomePage(look);
  }

  private void heard(SampleWindow window, String check, String answer) {
    Subject three = new Subject.AFeature(Feature.COMPRESSION, "B3");
    show(window, new HeardScreen(window.shell.context(), three));
    window.pressOnSomePage(check);
    window.pressOnSomePage(answer);
    show(window, new SignsScreen(window.shell.context()));
  }

  private void apart() {
    sample.job.state().parts().stream()
        .map(part -> part.part().item())
        .toList()
        .forEach(item -> sample.job.record(new PartOut(item)));
  }

  private void fails(SampleWindow window, String place) {
    show(window, ScreenId.INSPECT);
    window.scan(sample.tag(place));
    window.layOut();
    window.press("Fail");
    window.layOut();
  }

  /** The old part is not to be fitted any more; where the stop is left, nothing was fitted. */
  private void stopped(SampleWindow window, String place, String card) {
    show(window, ScreenId.PUT_TOGETHER);
    window.scan(sample.tag(place));
    window.scan(sample.card(card));
    window.layOut();
    assertThat(window.words()).contains("STOP").containsIgnoringCase("must be new");
    assertThat(sample.record(place).where()).isNotEqualTo(Whereabouts.IN_ENGINE);
  }

  private void bought(SampleWindow window, String line) {
    show(window, new BuyScreen(window.shell.context()));
    window.pressOnSomePage(line);
    window.press(line.startsWith("1 ") ? "It is here" : "They are here");
  }

  private void answerChecks() {
    Planning planning = new Planning(sample.job);
    for (StandingRule rule : planning.openChecks()) {
      planning.answer(rule.consequence().key(), Look.PASS, "seen");
    }
  }

  private void putTogether(SampleWindow window) {
    show(window, ScreenId.PUT_TOGETHER);
    for (Place place : new ToFit(sample.job).places()) {
      window.scan(sample.tag(place.key()));
      window.scan(sample.card(place.spot().key()));
      assertThat(window.words()).as(place.key()).contains("RIGHT PLACE");
    }
    assertThat(new ToFit(sample.job).places()).isEmpty();
    show(window, ScreenId.PUT_TOGETHER);
    window.press("Finish");
    List<Section> sections = new ToFit(sample.job).sections();
    sections.subList(1, sections.size()).forEach(new ToFit(sample.job)::finish);
    window.press("Valvetrain, left bank");
    window.press("Finish section");
    assertThat(new FirstStart(sample.job).isDue()).isTrue();
    assertThat(window.words()).contains("Before the first start", "fire extinguisher");
  }

  private String record() {
    return BuildRecord.of(sample.job).sections().stream()
        .flatMap(section -> section.rows().stream())
        .map(row -> String.join(" | ", row.cells()))
        .collect(Collectors.joining("\n"));
  }

  @Test
  void spunBearing() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          debris(window, "Pan", "Copper");
          assertThat(window.words()).contains("A few bearings");
          apart();
          fails(window, "rod-shell@R3U");
          assertThat(window.words()).contains("Must be new", "rod shells", "main shells");
          stopped(window, "rod-shell@R1U", "R1U");
          bought(window, "16 rod shells");
          bought(window, "10 main shells");
          answerChecks();
          putTogether(window);
          assertThat(record()).contains("rod or main bearing failed", "copper");
          return window;
        });
  }

  @Test
  void wipedFlatCam() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          debris(window, "Pan", "Steel flakes");
          assertThat(window.words()).contains("1. Lifters");
          apart();
          fails(window, "lifter@3EX");
          new Planning(sample.job).make(Change.of(ChangeKind.NEW_FLAT_CAM));
          stopped(window, "lifter@3EX", "3EX");
          bought(window, "16 lifters");
          answerChecks();
          putTogether(window);
          assertThat(record()).contains("foot of a lifter worn", "new flat-tappet cam");
          return window;
        });
  }

  @Test
  void burntValve() {
    sample = SampleJob.whole("v8-odd-even", WITH_VALVES);
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          heard(window, "Air at the exhaust?", "A strong hiss.");
          assertThat(window.words()).contains("xhaust valve");
          apart();
          fails(window, "valve@3EX");
          show(window, ScreenId.DECIDE);
          window.scan(sample.tag("valve@3EX"));
          window.layOut();
          window.press("Replace");
          window.pressOnSomePage("worn");
          bought(window, "1 exhaust valve");
          answerChecks();
          putTogether(window);
          assertThat(record()).contains("cylinder 3, exhaust, valve", "Air at the exhaust?");
          return window;
        });
  }

  @Test
  void overheatedHead() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          heard(window, "Bubbles in the coolant?", "A stream of bubbles.");
          assertThat(window.words()).contains("gasket");
          apart();
          Subject head = new Subject.AFeature(Feature.HEAD, "left");
          show(window, new CardScreen(window.shell.context(), head, List.of()));
          window.press("Fail");
          new Planning(sample.job).make(Change.at(ChangeKind.HEAD_MILLED, "left"));
          answerChecks();
          putTogether(window);
          assertThat(record()).contains("head milled", "Bubbles in the coolant?");
          return window;
        });
  }
}
