package wherefrom.print;

import java.util.ArrayList;
import java.util.List;

/** Ticks at the corners of a label that show where to cut; they lie outside the label. */
final class CutTicks {
  /** Two neighbours' ticks must fit into the gutter between them. */
  static final double LENGTH_MM = 1;

  private static final double THICK_MM = 0.2;

  private CutTicks() {}

  static List<PaperMark> round(Box label) {
    List<PaperMark> marks = new ArrayList<>();
    addCorner(marks, label.x(), label.y(), -1, -1);
    addCorner(marks, label.right(), label.y(), 1, -1);
    addCorner(marks, label.x(), label.bottom(), -1, 1);
    addCorner(marks, label.right(), label.bottom(), 1, 1);
    return marks;
  }

  private static void addCorner(List<PaperMark> marks, double x, double y, int across, int down) {
    marks.add(new PaperMark.Line(x, y, x + across * LENGTH_MM, y, THICK_MM));
    marks.add(new PaperMark.Line(x, y, x, y + down * LENGTH_MM, THICK_MM));
  }
}
