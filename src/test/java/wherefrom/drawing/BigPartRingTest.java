package wherefrom.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.BigPartName;
import wherefrom.parts.PartKind;

class BigPartRingTest {
  private static final Glass GLASS = Glass.screen(Glass.UNITS_PER_MM, 1);

  private static List<Bounds> slabs(List<Shape> shapes, Role role) {
    return shapes.stream()
        .filter(shape -> shape.role() == role)
        .filter(Shape.Slab.class::isInstance)
        .map(shape -> ((Shape.Slab) shape).bounds())
        .toList();
  }

  /** A ring beside the contour of a head that is away would be two heads, one in the other. */
  @ParameterizedTest
  @ValueSource(strings = {"v8-odd-even", "inline-6", "opposed-4"})
  void theRingOfAHeadLiesOnItsContour(String name) {
    Layout layout = SampleLayouts.ready(name);
    Bounds room = new Bounds(24, 74, 1232, 626);
    EngineGeometry at = EngineGeometry.of(layout, View.ABOVE, room, GLASS, BelowPanRail.NAMES);
    Drawing engine = EngineAbove.of(at, Asked.of(Set.of(PartKind.ROCKER)));
    List<Bounds> heads = slabs(engine.ground(), Role.CAST);
    for (Bank bank : layout.banks()) {
      String of = layout.banks().size() > 1 ? bank.name() : "";
      List<Shape> ring = BigPartRing.of(at, new BigPartName(BigPartKind.HEAD, of, ""));
      Bounds round = slabs(ring, Role.RING).get(0);
      assertThat(heads)
          .anySatisfy(
              head -> {
                assertThat(head.x()).isCloseTo(round.x(), within());
                assertThat(head.y()).isCloseTo(round.y(), within());
                assertThat(head.width()).isCloseTo(round.width(), within());
                assertThat(head.height()).isCloseTo(round.height(), within());
              });
    }
  }

  private static Offset<Double> within() {
    return Offset.offset(0.01);
  }
}
