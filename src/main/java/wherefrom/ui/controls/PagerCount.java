package wherefrom.ui.controls;

import java.util.List;
import javafx.scene.Parent;
import javafx.scene.layout.Region;

/** How many things the rows of a list hold, for the words between the keys that turn it. */
final class PagerCount {
  private static final Object LEFT_OUT = new Object();

  private PagerCount() {}

  /** The row is none of the things that the list holds: it only says something about them. */
  static void leaveOut(Region row) {
    row.getProperties().put(LEFT_OUT, true);
  }

  /** A row that is a list, or has several keys beside each other, has several things to count. */
  static int of(List<?> rows) {
    return rows.stream().mapToInt(PagerCount::things).sum();
  }

  private static int things(Object row) {
    if (row instanceof List<?> several) {
      return several.size();
    }
    if (row instanceof Region region && region.getProperties().containsKey(LEFT_OUT)) {
      return 0;
    }
    long keys =
        row instanceof Parent parent
            ? parent.getChildrenUnmodifiable().stream().filter(Touch::isTarget).count()
            : 0;
    return (int) Math.max(1, keys);
  }
}
