package wherefrom.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Layout;
import wherefrom.parts.PartKind;

/** The right way round is drawn as in all other drawings; the wrong one is its mirror image. */
class KindPairTest {
  private static final Layout V8 = SampleLayouts.ready("v8-odd-even");
  private static final Glass GLASS = Glass.screen(Glass.UNITS_PER_MM, 1);
  private static final Bounds ROOM = new Bounds(0, 0, 800, 400);

  private static List<Shape> shapes(boolean turned, boolean lower, PartKind kind) {
    KindPair.Side held = new KindPair.Side(kind, turned, lower, "held");
    KindPair.Side right = new KindPair.Side(kind, false, lower, "right");
    return KindPair.of(V8, held, right, ROOM, GLASS).ground();
  }

  /** The middle height of a shell's tang: near the open edge. */
  private static Bounds tang(List<Shape> shapes, boolean left) {
    return shapes.stream()
        .filter(shape -> shape instanceof Shape.Outline)
        .map(Shape.Outline.class::cast)
        .filter(outline -> outline.role() == Role.HOLLOW)
        .map(Shape::bounds)
        .filter(bounds -> bounds.middleX() < ROOM.middleX() == left)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aLowerShellIsOpenUpwardOnBothSidesAndOnlyItsTangIsElsewhere() {
    List<Shape> drawn = shapes(true, true, PartKind.ROD_SHELL);
    Bounds held = tang(drawn, true);
    Bounds right = tang(drawn, false);
    assertThat(held.middleY()).isEqualTo(right.middleY());
    assertThat(right.middleX()).isGreaterThan(600);
    assertThat(held.middleX()).isLessThan(200);
  }

  @Test
  void anUpperShellIsTheOtherWayUp() {
    double upper = tang(shapes(false, false, PartKind.MAIN_SHELL), false).middleY();
    double lower = tang(shapes(false, true, PartKind.MAIN_SHELL), false).middleY();
    assertThat(upper).isGreaterThan(lower);
  }

  /** The caption stands close below its ring, not at the lower edge of a high room. */
  @Test
  void theCaptionStandsByItsPart() {
    Bounds high = new Bounds(0, 0, 800, 1200);
    KindPair.Side side = new KindPair.Side(PartKind.ROD_SHELL, "right");
    Drawing drawn = KindPair.of(V8, side, side, high, GLASS);
    assertThat(
            Stream.concat(drawn.ground().stream(), drawn.words().stream())
                .filter(shape -> shape instanceof Shape.Words words && words.text().equals("right"))
                .map(Shape::bounds))
        .isNotEmpty()
        .allMatch(bounds -> bounds.middleY() < 960);
  }

  /** One caption alone would say that the other part has none. */
  @Test
  void whereOneCaptionLacksRoomNoneStands() {
    Bounds narrow = new Bounds(0, 0, 240, 400);
    KindPair.Side held = new KindPair.Side(PartKind.ROD_SHELL, "old");
    KindPair.Side right = new KindPair.Side(PartKind.ROD_SHELL, "much too long for it");
    Drawing drawn = KindPair.of(V8, held, right, narrow, GLASS);
    assertThat(Stream.concat(drawn.ground().stream(), drawn.words().stream()))
        .noneMatch(shape -> shape instanceof Shape.Words words && words.text().equals("old"));
  }

  /** Two like pictures without words say nothing: the tag is smaller before both words go. */
  @Test
  void theTagIsAsLargeAsItHasRoom() {
    KindPair.Side old = new KindPair.Side(PartKind.ROD_SHELL, "old");
    KindPair.Side right = new KindPair.Side(PartKind.ROD_SHELL, "NEW");
    Glass large = Glass.screen(Glass.UNITS_PER_MM, 2).grown();
    double wide = onTag(KindPair.of(V8, old, right, new Bounds(0, 0, 800, 400), large));
    double narrow = onTag(KindPair.of(V8, old, right, new Bounds(0, 0, 500, 400), large));
    assertThat(narrow).isBetween(0.7 * wide, 0.9 * wide);
  }

  private static double onTag(Drawing drawn) {
    return drawn.ground().stream()
        .filter(shape -> shape instanceof Shape.Words words && words.text().equals("NEW"))
        .mapToDouble(shape -> ((Shape.Words) shape).size())
        .findFirst()
        .orElseThrow();
  }
}
