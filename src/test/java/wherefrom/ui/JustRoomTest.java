package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.ui.audit.Audit;
import wherefrom.ui.audit.Fault;
import wherefrom.ui.controls.LinedKey;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleWindow;

/** Screens that the tablet or the smallest glass, with usual letters, has just room for. */
class JustRoomTest {
  private static <T> T at(Glass glass, String name, Function<SampleWindow, T> looked) {
    return ShownShot.find(glass, 100, name, looked);
  }

  private static List<Fault> faults(Glass glass, String name) {
    return at(glass, name, window -> Audit.of(window.scene, window.shell.context().scale()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"inspect-card-lifter", "phone-code", "phone-joined", "together-list"})
  void nothingIsCutOrCoveredOnTheTablet(String name) {
    assertThat(faults(Glass.TABLET, name)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"inspect-card-lifter", "part-bent", "piston-valve"})
  void nothingIsCutOrCoveredOnTheSmallestGlass(String name) {
    assertThat(faults(Glass.SMALL, name)).isEmpty();
  }

  /** A second row takes half of the engine's room. */
  @ParameterizedTest
  @ValueSource(strings = {"job-home", "job-home-stop", "job-home-run-in"})
  void theFiveDaysStandInOneRow(String name) {
    List<Double> tops =
        at(
            Glass.TABLET,
            name,
            window ->
                ShownShot.seen(window.scene.getRoot())
                    .filter(LinedKey.class::isInstance)
                    .map(key -> key.localToScene(key.getLayoutBounds()).getMinY())
                    .toList());
    assertThat(tops).hasSize(5);
    assertThat(tops.stream().distinct()).hasSize(1);
  }

  @Test
  void aNoteStandsWholeOnTheCardOfATest() {
    String words = at(Glass.TABLET, "inspect-card-lifter", SampleWindow::words);
    assertThat(words.replace('\n', ' ')).contains("Note: rocks a little on one side only");
  }

  @ParameterizedTest
  @ValueSource(ints = {150, 200})
  void theBadAnswersStandBesideTheGoodOne(int percent) {
    String words = ShownShot.find(Glass.SMALL, percent, "inspect-card-answer", SampleWindow::words);
    assertThat(words).contains("Pass", "Suspect", "Fail").doesNotContain("Down");
  }
}
