package wherefrom.ui.sketches;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.inspection.Check;
import wherefrom.inspection.Checks;

class SketchesTest {
  static java.util.List<Check> checks() {
    return Checks.all();
  }

  @ParameterizedTest
  @MethodSource("checks")
  void everyQuickTestHasADrawingWithASpotToLookAtInsideIt(Check check) {
    assertThat(Sketches.find(check)).isPresent();
    assertThat(Sketches.marks(check))
        .isNotEmpty()
        .allMatch(mark -> mark.x() >= 0 && mark.x() <= 120 && mark.y() >= 0 && mark.y() <= 60)
        .allMatch(mark -> !mark.words().isBlank());
  }
}
