package wherefrom.ui.puttogether;

import java.util.List;
import java.util.Locale;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.rules.Cue;
import wherefrom.ui.controls.CueMark;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/**
 * RIGHT PLACE: the tick, the place in letters of 20 mm, the part, what to watch. What nothing
 * proves has no tick and asks.
 */
final class RightPanel extends Region {
  private static final double MARK_MM = 34;
  private static final double LEAST_MARK_MM = 14;
  private static final double MARK = 0.7;
  private static final double MOST_MARK = 0.22;
  private static final double PAD_MM = 4.2;
  private static final double HEAD = 0.3;
  private static final double LINE = 1.18;
  private static final double TALL = 2.2;
  private static final double TALL_MARK_MM = 20;
  private static final double TALL_MARK = 0.3;

  /** The part and what to watch stand beside the place where so much is left of the width. */
  private static final double BESIDE = 0.28;

  private final Scale scale;
  private final Node mark;
  private final FitText head;
  private final FitText place;
  private final FitText kind;
  private final FitText whole;

  /** The way round in three words, for where a sentence has no room. */
  private final FitText brief;

  /** The one of both that is shown. */
  private FitText hint;

  /**
   * @param cue a tick, or the question mark of what nothing proves
   * @param headline such as {@code right place}
   * @param lines the place, then the part
   * @param watch what to watch; may be empty
   * @param way the way round in a few words; may be empty
   */
  RightPanel(Touch touch, Cue cue, String headline, List<String> lines, String watch, String way) {
    this.scale = touch.scale();
    mark = CueMark.of(cue, scale.px(MARK_MM));
    head = touch.lines(List.of(headline.toUpperCase(Locale.ROOT))).align(Pos.BOTTOM_LEFT);
    place = touch.lines(lines.stream().limit(1).toList()).align(Pos.CENTER_LEFT);
    kind = touch.heading(lines.size() > 1 ? lines.get(1) : "").align(Pos.BOTTOM_LEFT);
    whole = touch.small(watch).align(Pos.TOP_LEFT);
    brief = touch.small(way).align(Pos.TOP_LEFT);
    hint = whole;
    getStyleClass().add(cue == Cue.RIGHT ? "right-panel" : "card-ask");
    getChildren().setAll(mark, head, place, kind, whole, brief);
  }

  /** Whether it is so high for its width that the place gets the whole width. */
  private boolean isTall() {
    return getWidth() < TALL * getHeight();
  }

  private double pad() {
    return scale.px(PAD_MM);
  }

  private double side(double width, double height) {
    double wanted = Math.min(MARK * height, MOST_MARK * width);
    return Math.max(scale.px(LEAST_MARK_MM), wanted);
  }

  private double wordsWide(double width, double side) {
    return Math.max(1, width - side - 3 * pad());
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return side(0, 0) + 3 * pad();
  }

  @Override
  protected double computeMinHeight(double width) {
    double wide = wordsWide(width, side(width, 0));
    double least = head.minHeight(wide) + place.minHeight(wide) + kind.minHeight(wide);
    return Math.ceil(least + 1.6 * pad());
  }

  private void mark(double side, double x, double y) {
    double usual = scale.px(MARK_MM);
    mark.setScaleX(side / usual);
    mark.setScaleY(side / usual);
    double aside = (usual - side) / 2;
    mark.relocate(x - aside, y - aside);
  }

  /** The tick and the head in a line; below them the place, the part, what to watch. */
  private void tall() {
    double wide = getWidth() - 2.4 * pad();
    double left = 1.2 * pad();
    double side = Math.min(scale.px(TALL_MARK_MM), TALL_MARK * getHeight());
    double top = 0.8 * pad();
    double drawn = Math.min(side, Math.max(0, wide - pad() - head.minWidth(-1)));
    mark(drawn, left, top + (side - drawn) / 2);
    Panes.place(head, left + drawn + pad(), top, wide - drawn - pad(), side);
    double y = top + side;
    double room = getHeight() - top - side - pad();
    double named = high(kind, wide);
    double told = high(hint, wide);
    boolean watched = place.minHeight(wide) + named + told <= room;
    if (!watched && inLine(left, y, wide, room)) {
      return;
    }
    hint.setVisible(watched);
    double below = named + (watched ? told : 0);
    Panes.place(place, left, y, wide, room - below);
    kind.setVisible(place.minHeight(wide) + named <= room);
    Panes.place(kind, left, y + room - below, wide, named);
    Panes.place(hint, left, y + room - below + named, wide, told);
  }

  private static double high(FitText text, double wide) {
    return text.words().isEmpty() ? 0 : text.minHeight(Math.max(1, wide));
  }

  /**
   * The part beside its place, which shrinks for it, and what to watch below both: where one of
   * them has no line of its own.
   *
   * @return whether all three have room so
   */
  private boolean inLine(double x, double y, double wide, double room) {
    double told = high(hint, wide);
    double upper = room - told;
    double own = Math.min(kind.prefWidth(-1), wide - pad() - place.minWidth(-1));
    double left = wide - own - pad();
    boolean line = own >= kind.leastLineWidth() && place.minHeight(left) <= upper;
    boolean fits = told > 0 && line && kind.fits(own, upper);
    if (fits) {
      double natural = place.prefWidth(-1) * Math.min(1, upper / place.prefHeight(-1));
      double taken = Math.min(left, natural);
      hint.setVisible(true);
      kind.setVisible(true);
      Panes.place(place, x, y, taken, upper);
      Panes.place(kind, x + taken + pad(), y, own, upper);
      Panes.place(hint, x, y + upper, wide, told);
    }
    return fits;
  }

  /** The sentence, or where it has no room the few words. */
  @Override
  protected void layoutChildren() {
    lay(whole, brief);
    if (!whole.isVisible() && !brief.words().isEmpty()) {
      lay(brief, whole);
    }
  }

  private void lay(FitText watched, FitText other) {
    hint = watched;
    other.setVisible(false);
    if (isTall()) {
      tall();
      return;
    }
    double height = getHeight();
    double side = side(getWidth(), height);
    double wide = wordsWide(getWidth(), side);
    mark(side, 1.2 * pad(), (height - side) / 2);
    double left = side + 2.2 * pad();
    double top = 0.8 * pad();
    double room = height - 1.6 * pad();
    words(left, top, wide - 0.6 * pad(), room);
  }

  private void words(double left, double top, double wide, double room) {
    double upper = Math.max(head.minHeight(wide), HEAD * room);
    double lower = room - upper;
    double natural = place.prefWidth(-1) * Math.min(1, lower / place.prefHeight(-1));
    double free = wide - natural - pad();
    double told = high(hint, free);
    boolean roomy = free > 0 && kind.minHeight(free) + told <= lower;
    boolean beside = natural + BESIDE * wide <= wide && roomy;
    Panes.place(head, left, top, wide, upper);
    if (beside) {
      Panes.place(place, left, top + upper, natural, lower);
      double x = left + natural + pad();
      part(x, top + upper, left + wide - x, lower);
    } else if (!below(left, top + upper, wide, lower)) {
      inLine(left, top + upper, wide, lower);
    }
  }

  /** The part and what to watch in a line below the place; whether what to watch had room. */
  private boolean below(double left, double top, double wide, double lower) {
    double spare = lower - place.minHeight(wide);
    double wanted = Math.min(spare, Math.max(kind.minHeight(wide), belowShare(wide, lower)));
    boolean named = wanted >= kind.minHeight(wide);
    double below = named ? wanted : 0;
    kind.setVisible(named);
    Panes.place(place, left, top, wide, lower - below);
    line(left, top + lower - below, wide, below);
    return hint.isVisible();
  }

  /** What the part's line takes below the place: more where what to watch needs two lines. */
  private double belowShare(double wide, double lower) {
    double left = Math.max(1, wide - kind.prefWidth(-1) - pad());
    double told = high(hint, left);
    return Math.max(0.3 * lower, Math.min(told, 0.45 * lower));
  }

  /** The part, below it what to watch. */
  private void part(double x, double y, double wide, double high) {
    double told = high(hint, wide);
    boolean room = told + kind.minHeight(wide) <= high;
    hint.setVisible(room);
    double below = room ? told : 0;
    double own = Math.min(kind.prefHeight(wide), high - below);
    double from = y + Math.max(0, (high - own - below) / 2);
    Panes.place(kind, x, from, wide, own);
    Panes.place(hint, x, from + own, wide, below);
  }

  /** Both in one line, where the place takes the whole width. */
  private void line(double x, double y, double wide, double high) {
    double own = Math.min(wide, kind.prefWidth(-1));
    Panes.place(kind, x, y, own, high);
    double left = wide - own - pad();
    boolean room = left > 0 && hint.fits(left, high);
    hint.setVisible(room);
    boolean one = room && hint.leastLineWidth() <= left;
    hint.align(one ? Pos.BOTTOM_LEFT : Pos.TOP_LEFT);
    if (one) {
      Panes.place(hint, x + own + pad(), y, left, high);
    } else if (room) {
      double tall = Math.min(high, hint.prefHeight(left) * LINE);
      Panes.place(hint, x + own + pad(), y + (high - tall) / 2, left, tall);
    }
  }
}
