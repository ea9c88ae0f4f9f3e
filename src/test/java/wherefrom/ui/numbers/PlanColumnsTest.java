package wherefrom.ui.numbers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import org.junit.jupiter.api.Test;
import wherefrom.job.numbers.NumbersSample;
import wherefrom.job.numbers.PlanBook;
import wherefrom.ui.Toolkit;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.sample.SampleJob;

/** The plan's columns, in rooms of several heights: each row can be seen. */
class PlanColumnsTest {
  private static final int WIDE = 1400;
  private static final int LOW = 420;
  private static final int HIGH = 2400;

  private final SampleJob sample = SampleJob.apart();
  private final PlanModel model = new PlanModel(sample.job);
  private final Touch touch = new Touch(new Scale(5.9, 1), System::nanoTime);

  private PlanColumns columns() {
    PlanBook book = new PlanBook(sample.job);
    NumbersSample.now(book);
    book.add(1);
    book.set(1, "target", "9.5");
    PlanColumns columns = new PlanColumns(touch, at -> {});
    columns.show(model);
    Scene scene = new Scene(columns, WIDE, LOW);
    scene.getRoot().applyCss();
    return columns;
  }

  private static void height(PlanColumns columns, int high) {
    columns.resize(WIDE, high);
    columns.layout();
  }

  private static void press(PlanColumns columns, String words) {
    for (Node node : columns.getChildrenUnmodifiable()) {
      if (node instanceof TouchKey key && key.words().equals(words)) {
        Touch.press(key);
      }
    }
    columns.layout();
  }

  private List<String> seen(PlanColumns columns) {
    List<String> titles = model.figures().stream().map(PlanTableRows.Row::title).toList();
    List<String> seen = new ArrayList<>();
    for (Node node : columns.getChildrenUnmodifiable()) {
      if (node instanceof FitText words && titles.contains(words.words())) {
        seen.add(words.words());
      }
    }
    return seen;
  }

  /** A larger room, or smaller letters, leave no key to turn them back. */
  @Test
  void whereAllRowsHaveRoomTheyAreSeenFromTheFirst() {
    List<List<String>> steps =
        Toolkit.on(
            () -> {
              PlanColumns columns = columns();
              height(columns, LOW);
              List<String> first = seen(columns);
              press(columns, "Down");
              List<String> turned = seen(columns);
              height(columns, HIGH);
              return List.of(first, turned, seen(columns));
            });
    List<String> all = model.figures().stream().map(PlanTableRows.Row::title).toList();
    assertThat(steps.get(0)).isNotEmpty().hasSizeLessThan(all.size());
    assertThat(steps.get(1)).isNotEmpty().isNotEqualTo(steps.get(0));
    assertThat(steps.get(2)).isEqualTo(all);
  }
}
