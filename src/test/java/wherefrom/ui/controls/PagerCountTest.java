package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import wherefrom.ui.Toolkit;

/** The words between the keys that turn a list count what is listed, not its rows. */
class PagerCountTest {
  private static final int ROWS = 12;
  private static final int ACROSS = 3;

  private final Touch touch = new Touch(new Scale(5.9, 1), System::nanoTime);

  private Region row(List<Integer> numbers) {
    return Tiles.row(
        touch.scale(),
        numbers.stream()
            .map(number -> touch.key(Integer.toString(number), () -> {}))
            .toArray(Node[]::new));
  }

  private static List<List<Integer>> numbers() {
    List<List<Integer>> rows = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      rows.add(IntStream.rangeClosed(row * ACROSS + 1, (row + 1) * ACROSS).boxed().toList());
    }
    return rows;
  }

  private static String counted(Pager<?> list) {
    list.setMinSize(0, 0);
    Scene scene = list.getScene() == null ? new Scene(list, 750, 640) : list.getScene();
    scene.getRoot().applyCss();
    scene.getRoot().layout();
    return list.lookupAll(".ink").stream()
        .filter(node -> node instanceof Text && node.isVisible())
        .map(node -> ((Text) node).getText().replace('\n', ' '))
        .filter(words -> words.contains(" of "))
        .findFirst()
        .orElse("");
  }

  @Test
  void rowsOfSeveralKeysCountEachKey() {
    String ofRows =
        Toolkit.on(
            () -> {
              Pager<Region> list = Pager.list(touch, row -> row);
              list.setItems(numbers().stream().map(this::row).toList());
              return counted(list);
            });
    String ofLists =
        Toolkit.on(
            () -> {
              Pager<List<Integer>> list = Pager.list(touch, this::row);
              list.setItems(numbers());
              return counted(list);
            });
    assertThat(ofRows).isEqualTo("1–15 of 36").isEqualTo(ofLists);
  }

  @Test
  void aRowThatIsOneKeyCountsOnce() {
    String counted =
        Toolkit.on(
            () -> {
              Pager<Integer> list =
                  Pager.list(touch, number -> ListRow.key(touch, "a", List.of("b"), () -> {}));
              list.setItems(IntStream.range(0, ROWS).boxed().toList());
              return counted(list);
            });
    assertThat(counted).isEqualTo("1–5 of 12");
  }

  @Test
  void whatOnlySpeaksOfTheThingsIsNotCounted() {
    List<String> counted =
        Toolkit.on(
            () -> {
              List<Region> rows = new ArrayList<>();
              for (int row = 0; row < ROWS; row++) {
                Region said = ListRow.told(touch, "a", "b");
                rows.add(row < 2 ? said : Pager.uncounted(said));
              }
              Pager<Region> list = Pager.list(touch, row -> row);
              list.setItems(rows);
              String first = counted(list);
              list.turn(Pager.Turn.ON);
              return List.of(first, counted(list));
            });
    assertThat(counted).containsExactly("1–2 of 2", "");
  }
}
