package wherefrom.print;

import java.util.ArrayList;
import java.util.List;

/**
 * Sets rows of words one below the other into a box, as large as they go together: all grow by one
 * factor, each within its limits, and what must not be missing stays when room is short.
 */
final class RowStack {
  private static final double LEAST_FACTOR = 0.4;
  private static final double MOST_FACTOR = 12;
  private static final double GAP_MM = 0.9;
  private static final double CODE_GAP_MM = 1.6;
  private static final double GAP_SHARE = 0.15;

  /** Room that is left over is spread between the rows, but no gap gets more than this share. */
  private static final double MOST_SPREAD = 0.06;

  private final Box box;
  private final LabelLetters letters;

  /** A row and its measures in capital heights, taken once. */
  private record Measured(LabelLine row, double wide, double tall) {}

  private RowStack(Box box, LabelLetters letters) {
    this.box = box;
    this.letters = letters;
  }

  static List<PaperMark> set(List<LabelLine> rows, Box box, LabelLetters letters) {
    RowStack stack = new RowStack(box, letters);
    List<Measured> kept = stack.kept(rows);
    return kept.isEmpty() ? List.of() : stack.place(kept);
  }

  private List<Measured> kept(List<LabelLine> rows) {
    List<Measured> kept = new ArrayList<>();
    for (LabelLine row : rows) {
      if (!row.isEmpty()) {
        kept.add(new Measured(row, row.wide(letters), row.tall()));
      }
    }
    for (int next = 1; next <= 2 && height(kept, LEAST_FACTOR) > box.height(); next++) {
      int leaving = next;
      kept.removeIf(each -> each.row().style().leftOut == leaving);
    }
    return kept;
  }

  private double cap(Measured each, double factor) {
    return each.row().cap(factor, box.width(), each.wide());
  }

  private double height(List<Measured> rows, double factor) {
    double height = 0;
    for (int at = 0; at < rows.size(); at++) {
      double cap = cap(rows.get(at), factor);
      height += rows.get(at).tall() * cap + gap(rows, at, factor, cap);
    }
    return height;
  }

  /** The gap below a row; wider above the code, which is read alone. */
  private static double gap(List<Measured> rows, int at, double factor, double cap) {
    if (at == rows.size() - 1) {
      return 0;
    }
    RowStyle next = rows.get(at + 1).row().style();
    boolean code = next == RowStyle.CODE || next == RowStyle.CODE_AND_LINE;
    return (code ? CODE_GAP_MM : GAP_MM) * factor + GAP_SHARE * cap;
  }

  private List<PaperMark> place(List<Measured> rows) {
    double factor = factor(rows);
    double height = height(rows, factor);
    double squeeze = Math.min(1, box.height() / height);
    double spare = Math.max(0, box.height() - height) / Math.max(1, rows.size() - 1);
    double spread = Math.min(spare, MOST_SPREAD * box.height());
    List<PaperMark> marks = new ArrayList<>();
    double y = box.y();
    for (int at = 0; at < rows.size(); at++) {
      LabelLine row = rows.get(at).row();
      double cap = cap(rows.get(at), factor);
      marks.addAll(row.marks(box.x(), y, squeeze * cap, box.width(), letters));
      y += squeeze * (row.tall() * cap + gap(rows, at, factor, cap)) + spread;
    }
    return marks;
  }

  private double factor(List<Measured> rows) {
    double low = LEAST_FACTOR;
    double high = MOST_FACTOR;
    for (int step = 0; step < 24; step++) {
      double middle = (low + high) / 2;
      if (height(rows, middle) <= box.height()) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
