package wherefrom.ui.controls;

import java.util.List;
import javafx.scene.Parent;

/** How many things the rows of a list hold, for the words between the keys that turn it. */
final class PagerCount {
  private PagerCount() {}

  /** A row that is a list, or has several keys beside each other, has several things to count. */
  static int of(List<?> rows) {
    return rows.stream().mapToInt(PagerCount::things).sum();
  }

  private static int things(Object row) {
    if (row instanceof List<?> several) {
      return several.size();
    }
    long keys =
        row instanceof Parent parent
            ? parent.getChildrenUnmodifiable().stream().filter(Touch::isTarget).count()
            : 0;
    return (int) Math.max(1, keys);
  }
}
