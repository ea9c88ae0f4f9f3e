package wherefrom.ui.audit;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.text.Text;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Scale;

/**
 * Whether a page of a list leaves room free that what stands first on the next page would have had:
 * the list is turned on to see how high that is, and back again.
 */
final class RoomBelow {
  /** What is laid out stands on whole pixels. */
  private static final double ROUNDING = 2;

  /**
   * So many lines of a text that goes on may have had room: two stand together on the next page,
   * and a heading does not stand without its words.
   */
  private static final int LINES_KEPT = 3;

  private final Scale scale;

  RoomBelow(Scale scale) {
    this.scale = scale;
  }

  /** What is wrong, in words. */
  Optional<String> of(Pager<?> pager) {
    if (pager.getChildrenUnmodifiable().isEmpty()) {
      return Optional.empty();
    }
    List<Node> page = List.copyOf(pager.getChildrenUnmodifiable());
    Node last = page.get(Math.max(0, page.size() - 2));
    double free = free(pager, last, page.get(page.size() - 1));
    pager.turn(Pager.Turn.ON);
    pager.layout();
    Node next = pager.getChildrenUnmodifiable().get(0);
    if (next == page.get(0)) {
      return Optional.empty();
    }
    double high = high(next);
    pager.turn(Pager.Turn.BACK);
    pager.layout();
    double lacked = goesOn(last) ? LINES_KEPT * line(last) : high + gap(last, next);
    return lacked + ROUNDING > free
        ? Optional.empty()
        : Optional.of(Math.round(free) + " pixels are free, " + Math.round(lacked) + " are wanted");
  }

  /** What is free below the last row, above the keys if those stand below the list. */
  private double free(Pager<?> pager, Node last, Node keys) {
    boolean below = keys.getLayoutX() == 0 && keys.getLayoutY() > 0;
    double bottom = below ? keys.getLayoutY() - scale.gap() : pager.getHeight();
    return bottom - last.getLayoutY() - high(last);
  }

  private static double high(Node row) {
    return row.getLayoutBounds().getHeight();
  }

  private double gap(Node one, Node other) {
    return isRead(one) && isRead(other) ? 0 : scale.gap();
  }

  private static boolean isRead(Node row) {
    return row.getStyleClass().contains("row") || goesOn(row);
  }

  /** A row that is neither pressed nor has a line below it goes on on the next page. */
  private static boolean goesOn(Node row) {
    return row instanceof ListRow && row.getStyleClass().isEmpty();
  }

  private static double line(Node row) {
    List<Text> texts = row instanceof Parent parent ? new Painted(parent).texts() : List.of();
    return texts.stream()
        .reduce((one, next) -> next)
        .map(text -> text.getLayoutBounds().getHeight() / text.getText().lines().count())
        .orElse(0.0);
  }
}
