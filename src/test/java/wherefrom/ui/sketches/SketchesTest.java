package wherefrom.ui.sketches;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.inspection.Check;
import wherefrom.inspection.Checks;
import wherefrom.ui.Toolkit;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

class SketchesTest {
  static List<Check> checks() {
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

  /** Words that stand close to each other's are told apart by the line from each ring. */
  @ParameterizedTest
  @MethodSource("checks")
  void theWordsOfSeveralRingsAreEachLedTo(Check check) {
    Toolkit.on(
        () -> {
          SketchView view = new SketchView(new Touch(new Scale(4, 2), () -> 0), check);
          new Scene(view);
          view.applyCss();
          view.resize(1200, 500);
          view.layout();
          List<SketchLead> leads =
              view.getChildrenUnmodifiable().stream()
                  .filter(SketchLead.class::isInstance)
                  .map(SketchLead.class::cast)
                  .filter(Node::isVisible)
                  .toList();
          int rings = Sketches.marks(check).size();
          assertThat(leads).hasSize(rings > 1 ? rings : 0);
          for (SketchLead lead : leads) {
            assertThat(view.getChildrenUnmodifiable())
                .filteredOn(FitText.class::isInstance)
                .filteredOn(
                    words ->
                        words
                            .getBoundsInParent()
                            .intersects(lead.getEndX() - 5, lead.getEndY() - 5, 10, 10))
                .hasSize(1);
          }
          return 0;
        });
  }

  /** With large letters the words of a card's rings take no line that they can do without. */
  @ParameterizedTest
  @MethodSource("checks")
  void largeWordsThatFitOneLineStandBelowTheDrawingAndNeverOnEachOther(Check check) {
    Toolkit.on(
        () -> {
          Touch touch = new Touch(new Scale(4, 2), () -> 0);
          SketchView view = new SketchView(touch, check);
          new Scene(view);
          view.applyCss();
          view.resize(1200, 500);
          view.layout();
          List<Bounds> told =
              view.getChildrenUnmodifiable().stream()
                  .filter(FitText.class::isInstance)
                  .filter(Node::isVisible)
                  .map(Node::getBoundsInParent)
                  .toList();
          assertThat(told).hasSize(Sketches.marks(check).size());
          assertThat(told.stream().map(Bounds::getMinY).distinct()).hasSize(1);
          assertThat(told).allMatch(one -> one.getMinX() >= 0 && one.getMaxX() <= 1200);
          for (Bounds one : told) {
            assertThat(told.stream().filter(one::intersects)).hasSize(1);
          }
          return 0;
        });
  }

  /** Words that stand close are read as one sentence. */
  @ParameterizedTest
  @MethodSource("checks")
  void wordsInOneLineStandWellApart(Check check) {
    Toolkit.on(
        () -> {
          Scale scale = new Scale(4, 1);
          SketchView view = new SketchView(new Touch(scale, () -> 0), check);
          new Scene(view);
          view.applyCss();
          view.resize(700, 400);
          view.layout();
          List<Bounds> told =
              view.getChildrenUnmodifiable().stream()
                  .filter(FitText.class::isInstance)
                  .filter(Node::isVisible)
                  .map(Node::getBoundsInParent)
                  .sorted(Comparator.comparingDouble(Bounds::getMinX))
                  .toList();
          assertThat(told).isNotEmpty();
          for (Bounds one : told) {
            assertThat(one.getMinX()).isNotNegative();
            assertThat(one.getMaxX()).isLessThanOrEqualTo(700);
            told.stream()
                .filter(other -> other.getMinY() == one.getMinY())
                .filter(other -> other.getMinX() > one.getMinX())
                .forEach(
                    other ->
                        assertThat(other.getMinX() - one.getMaxX())
                            .isGreaterThanOrEqualTo(scale.px(8) - 0.5));
          }
          return 0;
        });
  }
}
