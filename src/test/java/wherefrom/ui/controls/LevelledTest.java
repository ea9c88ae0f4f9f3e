package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.Scene;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import wherefrom.ui.Toolkit;

/** The headings of one list are of one size, whatever each row had room for by itself. */
class LevelledTest {
  private final Touch touch = new Touch(new Scale(5.9, 1), System::nanoTime);

  /** The sizes of the bold letters of a list, in whole pixels. */
  private static Set<Long> sizes(Pager<Region> list) {
    list.setMinSize(0, 0);
    Scene scene = new Scene(list, 900, 420);
    scene.getRoot().applyCss();
    scene.getRoot().layout();
    scene.getRoot().layout();
    return list.lookupAll(".ink").stream()
        .filter(Text.class::isInstance)
        .map(Text.class::cast)
        .filter(text -> text.getText().startsWith("Head"))
        .map(text -> Math.round(text.getFont().getSize()))
        .collect(Collectors.toSet());
  }

  private Pager<Region> list(List<Region> rows) {
    Pager<Region> list = Pager.list(touch, row -> row);
    list.setItems(rows);
    return list;
  }

  private ListRow row(String heading, String... lines) {
    return ListRow.plain(touch, heading, List.of(lines));
  }

  @Test
  void aRowWithItsHeadAloneHasNoLargerOneThanARowWithLines() {
    Set<Long> sizes =
        Toolkit.on(
            () -> {
              List<Region> rows = new ArrayList<>();
              for (int at = 0; at < 8; at++) {
                rows.add(at % 2 == 0 ? row("Head " + at) : row("Head " + at, "one", "two"));
              }
              return sizes(list(rows));
            });
    assertThat(sizes).hasSize(1);
  }

  @Test
  void keysOfSeveralRowsAreAlike() {
    Set<Long> sizes =
        Toolkit.on(
            () -> {
              List<Region> rows = new ArrayList<>();
              rows.add(Tiles.row(touch.scale(), key("Head a"), key("Head b")));
              rows.add(
                  Tiles.row(
                      touch.scale(),
                      key("Head c, with as many words as are written in two lines of a key"),
                      key("Head d")));
              rows.add(key("Head e"));
              return sizes(list(rows));
            });
    assertThat(sizes).hasSize(1);
  }

  private TouchKey key(String words) {
    return touch.key(words, () -> {});
  }
}
