package wherefrom.print;

import java.util.ArrayList;
import java.util.List;

/**
 * One row of words on a label. All its measures grow with the height of its capitals.
 *
 * @param text already clean
 * @param badge white on black at the right end; empty for none
 */
record LabelLine(String text, RowStyle style, String badge) {
  private static final double BAND_PAD = 0.45;
  private static final double BADGE_CAP = 0.42;
  private static final double BADGE_PAD = 0.6;
  private static final double ARROW_WIDTH = 1.2;
  private static final double ARROW_TALL = 1.35;
  private static final double LEAST_LINE = 3;
  private static final double ARROW_GAP = 0.5;

  /** Long words shrink to this share of their row's height before they are shortened. */
  private static final double MOST_SHRINKING = 0.7;

  private static final double LINE_MM = 0.2;

  static LabelLine of(String text, RowStyle style) {
    return new LabelLine(text, style, "");
  }

  boolean isEmpty() {
    return text.isEmpty() && style != RowStyle.WRITE_ON;
  }

  /** Height in capital heights. */
  double tall() {
    return switch (style) {
      case BAND -> 1 + 2 * BAND_PAD;
      case ARROW -> ARROW_TALL;
      default -> 1;
    };
  }

  /** Width in capital heights. */
  double wide(LabelLetters letters) {
    return letters.face(style.bold).width(text) + beside(letters);
  }

  private double beside(LabelLetters letters) {
    double extra =
        switch (style) {
          case ARROW -> ARROW_WIDTH + ARROW_GAP;
          case BAND -> 2 * BAND_PAD;
          case CODE_AND_LINE -> LEAST_LINE;
          default -> 0;
        };
    return extra + (badge.isEmpty() ? 0 : 0.4 + badgeWide(letters));
  }

  private double badgeWide(LabelLetters letters) {
    return BADGE_CAP * (letters.bold().width(badge) + 2 * BADGE_PAD);
  }

  /** The height of the capitals when everything grows by a factor, within a width. */
  double cap(double factor, double width, double wide) {
    double cap = Math.max(style.floor, Math.min(style.ceiling, factor * style.base));
    double fitting = width / Math.max(wide, 1e-6);
    if (fitting >= cap) {
      return cap;
    }
    double least = Math.max(style.floor, MOST_SHRINKING * cap);
    return style.mayShorten ? Math.max(least, fitting) : fitting;
  }

  /** What is drawn: the row's top left corner, capitals of a height, within a width. */
  List<PaperMark> marks(double x, double y, double cap, double width, LabelLetters letters) {
    List<PaperMark> marks = new ArrayList<>();
    double baseline = y + cap;
    String shown = letters.face(style.bold).shorten(text, width / cap - beside(letters));
    switch (style) {
      case WRITE_ON -> marks.add(new PaperMark.Line(x, baseline, x + width, baseline, LINE_MM));
      case BAND -> {
        double pad = BAND_PAD * cap;
        marks.add(new PaperMark.Black(new Box(x, y, width, tall() * cap)));
        marks.add(letters.white(shown, true, x + pad, baseline + pad, cap));
      }
      case ARROW -> {
        marks.add(new PaperMark.ArrowUp(new Box(x, y, ARROW_WIDTH * cap, ARROW_TALL * cap)));
        double down = (ARROW_TALL - 1) / 2 * cap;
        double right = (ARROW_WIDTH + ARROW_GAP) * cap;
        marks.add(letters.words(shown, true, x + right, baseline + down, cap));
      }
      case CODE_AND_LINE -> {
        PaperMark.Words code = letters.words(shown, true, x, baseline, cap);
        double from = code.box().right() + ARROW_GAP * cap;
        marks.add(code);
        marks.add(new PaperMark.Line(from, baseline, x + width, baseline, LINE_MM));
      }
      default -> marks.add(letters.words(shown, style.bold, x, baseline, cap));
    }
    if (!badge.isEmpty()) {
      addBadge(marks, x + width, y, cap, letters);
    }
    return marks;
  }

  private void addBadge(
      List<PaperMark> marks, double right, double y, double cap, LabelLetters letters) {
    double small = BADGE_CAP * cap;
    double width = badgeWide(letters) * cap;
    double pad = BADGE_PAD * small;
    marks.add(new PaperMark.Black(new Box(right - width, y, width, small + 2 * pad)));
    marks.add(letters.white(badge, true, right - width + pad, y + pad + small, small));
  }
}
