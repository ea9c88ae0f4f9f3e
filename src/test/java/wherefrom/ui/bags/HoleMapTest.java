package wherefrom.ui.bags;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.shape.Circle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.job.entry.BoltHole;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.ui.Toolkit;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/** The holes of a face, on low glass with large letters too. */
class HoleMapTest {
  private static final double WIDE_MM = 150;
  private static final double HIGH_MM = 46;

  private final Scale scale = new Scale(4.7, 2);
  private final Touch touch = new Touch(scale, System::nanoTime);

  private static List<BoltHole> twoRows() {
    List<BoltHole> holes = new ArrayList<>();
    for (int at = 0; at < 10; at++) {
      int across = 10 + at % 5 * 20;
      int down = at < 5 ? 10 : 40;
      holes.add(new BoltHole(at + 1, Optional.of(across), Optional.of(down), Optional.empty()));
    }
    return holes;
  }

  private HoleMap map() {
    HoleMap map = HoleMap.keyed(touch, at -> {});
    map.show(twoRows(), 10);
    map.resize(scale.px(WIDE_MM), scale.px(HIGH_MM));
    map.layout();
    return map;
  }

  private static List<Circle> circles(HoleMap map) {
    return map.getChildrenUnmodifiable().stream()
        .filter(Circle.class::isInstance)
        .map(Circle.class::cast)
        .toList();
  }

  private static Point2D middle(Circle circle) {
    return new Point2D(circle.getCenterX(), circle.getCenterY());
  }

  @Test
  void noHoleLiesOnAnother() {
    List<Circle> circles = Toolkit.on(() -> circles(map()));
    assertThat(circles).hasSize(10);
    for (Circle one : circles) {
      assertThat(circles.stream().filter(other -> other != one))
          .allMatch(other -> middle(one).distance(middle(other)) > 2 * one.getRadius());
    }
  }

  /** A tap where a hole is drawn is told as the place that the hole has. */
  @Test
  void aTapMeansTheHoleUnderIt() {
    HoleMap map = Toolkit.on(this::map);
    Point2D seventh = middle(circles(map).get(6));
    assertThat(map.find(seventh)).contains(7);
    assertThat(map.across(seventh)).isEqualTo(30);
    assertThat(map.down(seventh)).isEqualTo(40);
  }

  @Test
  void everyNumberIsRead() {
    HoleMap map = Toolkit.on(this::map);
    List<Node> numbers =
        map.getChildrenUnmodifiable().stream()
            .filter(node -> node.getStyleClass().contains("in-figure"))
            .toList();
    assertThat(numbers).hasSize(10).allMatch(Node::isVisible);
  }

  /** Some lengths alone would read as if the others were not measured. */
  @ParameterizedTest
  @ValueSource(ints = {46, 60, 75, 120})
  void allLengthsOrNoneAreShown(int highMm) {
    List<BoltHole> known =
        twoRows().stream()
            .map(
                hole ->
                    new BoltHole(
                        hole.hole(),
                        hole.across(),
                        hole.down().map(down -> down == 40 ? 90 : down),
                        Optional.of(Amount.of(3.75, Unit.INCH))))
            .toList();
    List<Boolean> shown =
        Toolkit.on(
            () -> {
              HoleMap map = HoleMap.shown(touch, known);
              map.resize(scale.px(WIDE_MM), scale.px(highMm));
              map.layout();
              return map.getChildrenUnmodifiable().stream()
                  .filter(FitText.class::isInstance)
                  .filter(node -> ((FitText) node).words().equals("3.75"))
                  .map(Node::isVisible)
                  .toList();
            });
    assertThat(shown).hasSize(10);
    assertThat(shown.stream().distinct()).hasSize(1);
    assertThat(shown.get(0)).isEqualTo(highMm == 120);
  }
}
