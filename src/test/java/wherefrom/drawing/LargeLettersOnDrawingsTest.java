package wherefrom.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.engine.Layout;
import wherefrom.engine.LifterType;
import wherefrom.engine.RockerMount;
import wherefrom.parts.PartKind;

/**
 * Letters and marks that grow with the person's text cover no other, on lying glass and upright.
 */
class LargeLettersOnDrawingsTest {
  private static final Layout V8 = SampleLayouts.ready("v8-odd-even");
  private static final Layout SHAFT = SampleLayouts.with(V8, LifterType.ROLLER, RockerMount.SHAFT);

  /** Width and height of what a page leaves a drawing, in units; how much larger the text is. */
  static Stream<Arguments> rooms() {
    return Stream.of(1.0, 1.5, 2.0)
        .flatMap(
            factor ->
                Stream.of(
                    Arguments.of(1068.0, 640.0, factor),
                    Arguments.of(710.0, 950.0, factor),
                    Arguments.of(1750.0, 1020.0, factor),
                    Arguments.of(1400.0, 880.0, factor)));
  }

  private static Glass glass(double factor) {
    return Glass.screen(Glass.UNITS_PER_MM, factor);
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void noMarkOfACylinderLiesOnAnother(double width, double height, double factor) {
    Bounds room = new Bounds(0, 0, width, height);
    Glass glass = glass(factor);
    if (!CylinderZoom.fits(room, 3, glass)) {
      return;
    }
    for (Layout layout : List.of(V8, SHAFT)) {
      Drawing drawing = CylinderZoom.of(layout, 3, room, Asked.of(PartKind.all()), glass);
      List<Anchor> anchors = drawing.anchors();
      for (int one = 0; one < anchors.size(); one++) {
        for (int other = one + 1; other < anchors.size(); other++) {
          assertThat(apart(anchors.get(one), anchors.get(other)))
              .as(anchors.get(one).held() + " and " + anchors.get(other).held())
              .isGreaterThanOrEqualTo(anchors.get(one).mark());
        }
      }
    }
  }

  /** How far two marks are from each other, the way in which they are farther apart. */
  private static double apart(Anchor one, Anchor other) {
    Point first = one.held().get(0).mark();
    Point second = other.held().get(0).mark();
    return Math.max(Math.abs(first.x() - second.x()), Math.abs(first.y() - second.y()));
  }

  /** A name that is nearer to the cap than to its own shell names the wrong part. */
  @ParameterizedTest
  @MethodSource("rooms")
  void theNameOfALowerShellStandsNearerToItThanToTheCap(
      double width, double height, double factor) {
    Bounds room = new Bounds(0, 0, width, height);
    Glass glass = glass(factor);
    if (!MainsPage.fits(room, glass)) {
      return;
    }
    int count = Math.min(5, MainsPage.fitting(width, glass));
    Drawing drawing = MainsPage.of(V8, 1, count, room, Asked.of(PartKind.all()), glass);
    double name =
        drawing.words().stream()
            .filter(Shape.Words.class::isInstance)
            .map(Shape.Words.class::cast)
            .filter(words -> words.text().equals("lower"))
            .mapToDouble(Shape.Words::y)
            .findFirst()
            .orElse(Double.NaN);
    double cap = bounds(drawing, "main 1, cap").y();
    double mark = mark(drawing, "main 1, lower").y() + ZoomColumn.mark(glass) / 2;
    double foot = Math.max(mark, bounds(drawing, "main 1, lower").bottom());
    assertThat(name - foot).isLessThanOrEqualTo(cap - name + 1e-6);
  }

  private static Point mark(Drawing drawing, String place) {
    return drawing.anchors().stream()
        .map(anchor -> anchor.held().get(0))
        .filter(held -> PlaceWords.named(V8, held.place()).startsWith(place))
        .findFirst()
        .orElseThrow()
        .mark();
  }

  private static Bounds bounds(Drawing drawing, String place) {
    return drawing.parts().stream()
        .filter(figure -> PlaceWords.named(V8, figure.place()).startsWith(place))
        .findFirst()
        .orElseThrow()
        .bounds();
  }
}
