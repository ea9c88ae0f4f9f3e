package wherefrom.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.parts.Place;

/** The octagon of a stop stands beside its ring, on small drawings too. */
class StopRingsTest {
  /** The octagon's own line lies outside its box. */
  private static final double AIR = 2;

  private static final Layout V8 = ReadyLayouts.find("v8-odd-even").orElseThrow();

  @ParameterizedTest
  @ValueSource(strings = {"pushrod@3EX", "pushrod@5EX", "pushrod@8IN"})
  void theOctagonHidesNeitherItsRingNorANumber(String name) {
    Place place = Place.find(name).orElseThrow();
    EngineGeometry at =
        EngineGeometry.of(
            V8, View.ABOVE, new Bounds(0, 0, 430, 210), Glass.screen(4.7, 1), BelowPanRail.NONE);
    Drawing drawn = EngineAbove.of(at, Asked.of(Set.of(place.kind())));
    List<Shape> shapes = StopRings.of(drawn, Set.of(place), Set.of());
    Bounds octagon =
        shapes.stream()
            .filter(shape -> shape.role() == Role.STOP)
            .map(Shape::bounds)
            .reduce(Bounds::with)
            .orElseThrow();
    Point middle = drawn.find(place).orElseThrow().pointer().at();
    Bounds ring = new Bounds(middle.x(), middle.y(), 0, 0);
    assertThat(octagon.gapTo(ring))
        .as("what is ringed is seen")
        .isGreaterThan(0.3 * drawn.find(place).orElseThrow().pointer().radius());
    assertThat(drawn.words())
        .filteredOn(shape -> shape.role() == Role.NUMBER)
        .isNotEmpty()
        .allSatisfy(number -> assertThat(octagon.gapTo(number.bounds())).isGreaterThan(AIR));
  }

  /** The usual slip: the same part of the cylinder beside it, whose ring takes one side. */
  @ParameterizedTest
  @CsvSource({"pushrod@5EX, pushrod@3EX", "pushrod@3EX, pushrod@5EX", "pushrod@4EX, pushrod@6EX"})
  void theOctagonHidesNoNumberBesideTheOtherRing(String wrong, String right) {
    Place here = Place.find(wrong).orElseThrow();
    Place home = Place.find(right).orElseThrow();
    EngineGeometry at =
        EngineGeometry.of(
            V8, View.ABOVE, new Bounds(0, 0, 430, 210), Glass.screen(4.7, 1), BelowPanRail.NONE);
    Drawing drawn = EngineAbove.of(at, Asked.of(Set.of(here.kind())));
    Bounds octagon =
        StopRings.of(drawn, Set.of(here), Set.of(home)).stream()
            .filter(shape -> shape.role() == Role.STOP)
            .map(Shape::bounds)
            .reduce(Bounds::with)
            .orElseThrow();
    assertThat(drawn.words())
        .filteredOn(shape -> shape.role() == Role.NUMBER)
        .allSatisfy(number -> assertThat(octagon.gapTo(number.bounds())).isGreaterThan(AIR));
  }

  /** A small drawing has no room for the ring beside the number: the number lies above it then. */
  @Test
  void aNumberThatARingReachesIsToBeDrawnAboveIt() {
    Place place = Place.find("pushrod@3EX").orElseThrow();
    EngineGeometry at =
        EngineGeometry.of(
            V8, View.ABOVE, new Bounds(0, 0, 430, 210), Glass.screen(4.7, 1), BelowPanRail.NONE);
    Drawing drawn = EngineAbove.of(at, Asked.of(Set.of(place.kind())));
    List<Shape> ring = drawn.find(place).orElseThrow().pointer().here(drawn.glass());
    assertThat(drawn.numbersUnder(ring))
        .singleElement()
        .isInstanceOfSatisfying(
            Shape.Words.class, number -> assertThat(number.text()).isEqualTo("3"));
    assertThat(drawn.numbersUnder(List.of())).isEmpty();
  }
}
