package wherefrom.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.parts.PartKind;

/** IN and EX at the valves, where they cost the drawing next to nothing. */
class SideLettersTest {
  private static final Glass GLASS = Glass.screen(5.43, 1);
  private static final Bounds LAPTOP = new Bounds(0, 0, 1400, 700);

  static List<Layout> layouts() {
    return List.copyOf(ReadyLayouts.all());
  }

  private static EngineGeometry lettered(Layout layout, Bounds room, Glass glass) {
    return EngineGeometry.lettered(layout, View.ABOVE, room, glass, BelowPanRail.NONE);
  }

  private static Drawing draw(EngineGeometry at) {
    return EngineAbove.of(at, Asked.of(PartKind.alwaysOn()));
  }

  private static List<Shape.Words> letters(Drawing drawn) {
    List<Shape.Words> letters = new ArrayList<>();
    for (Shape shape : drawn.words()) {
      if (shape instanceof Shape.Words words && List.of("IN", "EX").contains(words.text())) {
        letters.add(words);
      }
    }
    return letters;
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void eachValveHasItsLettersBesideItAndNothingElseThere(Layout layout) {
    EngineGeometry at = lettered(layout, LAPTOP, GLASS);
    Drawing drawn = draw(at);
    List<Shape.Words> letters = letters(drawn);
    assertThat(letters).hasSize(2 * layout.cylinders().size());
    for (int cylinder : layout.cylinders()) {
      for (ValveSide side : ValveSide.values()) {
        double x = at.valveX(new ValveSpot(cylinder, side));
        String word = SideLetters.of(side);
        boolean above = at.sign(cylinder) < 0;
        assertThat(letters)
            .as(cylinder + " " + word)
            .anyMatch(
                one ->
                    one.text().equals(word)
                        && Math.abs(one.bounds().middleX() - x) < 1
                        && one.bounds().middleY() < at.axis() == above);
      }
    }
    for (Shape.Words one : letters) {
      assertThat(one.bounds().y()).isGreaterThanOrEqualTo(drawn.frame().y() - 1e-6);
      assertThat(one.bounds().bottom()).isLessThanOrEqualTo(drawn.frame().bottom() + 1e-6);
      assertThat(drawn.ground()).noneMatch(shape -> shape.bounds().gapTo(one.bounds()) < 0);
      assertThat(letters)
          .filteredOn(other -> other != one)
          .noneMatch(other -> other.bounds().gapTo(one.bounds()) < 0);
    }
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void theyTakeNoZoneAndLittleOfTheDrawing(Layout layout) {
    for (double height = 150; height < 900; height += 25) {
      Bounds room = new Bounds(0, 0, 1068, height);
      EngineGeometry plain = EngineGeometry.of(layout, View.ABOVE, room, GLASS, BelowPanRail.NONE);
      EngineGeometry with = lettered(layout, room, GLASS);
      assertThat(with.pitch()).isGreaterThanOrEqualTo(0.86 * plain.pitch());
      assertThat(draw(with).zones()).hasSameSizeAs(draw(plain).zones());
      assertThat(with.bounds().height()).isLessThanOrEqualTo(height + 1e-6);
    }
  }

  @Test
  void whereThereIsNoRoomThereAreNone() {
    Layout v8 = ReadyLayouts.find("v8-odd-even").orElseThrow();
    assertThat(letters(draw(lettered(v8, new Bounds(0, 0, 1068, 280), GLASS)))).isEmpty();
    assertThat(letters(draw(lettered(v8, LAPTOP, Glass.screen(5.43, 2)))))
        .as("as large as the person set all letters")
        .allMatch(one -> one.size() >= 2 * GLASS.letter());
    EngineGeometry below =
        EngineGeometry.lettered(v8, View.BELOW, LAPTOP, GLASS, BelowPanRail.NONE);
    assertThat(below.isLettered()).isFalse();
  }
}
