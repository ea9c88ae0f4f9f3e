package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Scene;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import wherefrom.ui.Toolkit;

/** Keys side by side, of which one has the longest word. */
class TilesTest {
  private static final Scale SCALE = new Scale(4, 1);

  private final Touch touch = new Touch(SCALE, () -> 0);

  /** The keys as they stand in a row of a width, beside what their words need in all. */
  private List<TouchKey> laidOut(double part) {
    List<TouchKey> keys =
        Stream.of("Remeasure", "Note", "More").map(words -> touch.key(words, () -> {})).toList();
    Tiles row = Tiles.row(SCALE, keys.toArray(TouchKey[]::new));
    new Scene(row);
    row.applyCss();
    double words = keys.stream().mapToDouble(key -> Math.ceil(key.minWidth(-1))).sum();
    double width = Math.ceil(part * words) + 2 * SCALE.gap();
    row.resize(width, row.minHeight(width));
    row.layout();
    return keys;
  }

  private static long rows(List<TouchKey> keys) {
    return keys.stream().map(TouchKey::getLayoutY).distinct().count();
  }

  @Test
  void aRowStaysOneWhereItsWordsFitThoughNotAsEquals() {
    Toolkit.on(
        () -> {
          List<TouchKey> keys = laidOut(1.02);
          assertThat(rows(keys)).isEqualTo(1);
          double from = 0;
          for (TouchKey key : keys) {
            assertThat(key.getLayoutX()).isGreaterThanOrEqualTo(from);
            assertThat(key.getWidth()).isGreaterThanOrEqualTo(key.minWidth(-1));
            from = key.getLayoutX() + key.getWidth() + SCALE.gap();
          }
          assertThat(from - SCALE.gap())
              .isLessThanOrEqualTo(keys.get(0).getParent().getLayoutBounds().getWidth());
          return 0;
        });
  }

  @Test
  void keysAreEqualWhereThatFitsAndStandInSeveralRowsWhereNothingElseDoes() {
    Toolkit.on(
        () -> {
          List<Double> widths = new ArrayList<>();
          laidOut(2).forEach(key -> widths.add(key.getWidth()));
          assertThat(widths.stream().distinct()).hasSize(1);
          assertThat(rows(laidOut(0.9))).isGreaterThan(1);
          return 0;
        });
  }

  @Test
  void rowsOfAListBesideEachOtherHaveHeadingsOfOneSize() {
    Toolkit.on(
        () -> {
          List<ListRow> rows =
              Stream.of("Oil: 52 psi", "Coolant and its temperature: 165")
                  .map(words -> ListRow.key(touch, words, List.of(), () -> {}))
                  .toList();
          Tiles row = Tiles.row(SCALE, rows.toArray(ListRow[]::new));
          new Scene(row);
          row.applyCss();
          row.resize(SCALE.px(130), SCALE.px(22));
          row.layout();
          rows.forEach(ListRow::layout);
          assertThat(
                  rows.stream()
                      .map(one -> (FitText) one.getChildren().get(0))
                      .peek(FitText::layout)
                      .map(title -> ((Text) title.getChildrenUnmodifiable().get(0)).getFont())
                      .map(Font::getSize)
                      .distinct())
              .hasSize(1);
          return 0;
        });
  }
}
