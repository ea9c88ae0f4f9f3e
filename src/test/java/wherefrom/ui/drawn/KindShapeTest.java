package wherefrom.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.drawing.Shape;
import wherefrom.engine.ReadyLayouts;
import wherefrom.parts.PartKind;
import wherefrom.ui.controls.Scale;

/** Shells and caps of rods and mains are alike but for their letter. */
class KindShapeTest {
  private static final double KEY_SHARE = 0.64;

  @ParameterizedTest
  @CsvSource({
    "ROD_SHELL, 1, R",
    "ROD_SHELL, 2, R",
    "MAIN_SHELL, 1.5, M",
    "ROD_CAP, 2, R",
    "MAIN_CAP, 2, M"
  })
  void aKeyTellsThemApartWithLettersOfAnySize(PartKind kind, double factor, String letter) {
    Scale scale = new Scale(5.43, factor);
    double side = KEY_SHARE * scale.px(Scale.KEY_MM);
    List<Shape> shapes =
        KindShape.shapes(scale, ReadyLayouts.find("v8-odd-even").orElseThrow(), kind, side);
    assertThat(shapes)
        .filteredOn(Shape.Words.class::isInstance)
        .extracting(shape -> ((Shape.Words) shape).text())
        .containsExactly(letter);
  }
}
