package wherefrom.ui.drawn;

import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.View;
import wherefrom.engine.Layout;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/**
 * FRONT, from where the engine is seen, FLYWHEEL: above the drawing, as wide as it is. Where they
 * do not fit side by side, the words in the middle get a line of their own. They are the first to
 * leave, then FLYWHEEL; FRONT stays as long as there is any room for it, as a drawing whose ends
 * nobody knows can be held the wrong way round.
 */
final class Captions extends Region {
  /** What of them is shown, the most first. */
  enum Shown {
    /** All three. */
    ALL,
    /** The two ends, in one line. */
    ENDS,
    /** Each end beside its end of the drawing, where there is no height above it. */
    BESIDE,
    /** The front alone, in a line above its end: it tells the other end, too. */
    FRONT_ABOVE,
    /** The same beside the drawing. */
    FRONT;

    boolean isBeside() {
      return this == BESIDE || this == FRONT;
    }
  }

  private static final double BETWEEN_MM = 3.4;

  /** So many lines' heights at least part the two ends: they are no two words of one name. */
  private static final double APART = 1.4;

  private static final double LINE = 1.22;

  private final FitText front;
  private final FitText rear;
  private final FitText seen;
  private final double between;
  private final double line;
  private double keptFrom;
  private double keptTo;
  private Shown shown = Shown.ALL;

  Captions(Touch touch) {
    front = touch.fit("FRONT", Scale.SMALL_MM, Scale.SMALL_MM, true);
    rear = touch.fit("FLYWHEEL", Scale.SMALL_MM, Scale.SMALL_MM, true);
    seen = touch.small("");
    seen.getStyleClass().add("second");
    Scale scale = touch.scale();
    between = scale.px(BETWEEN_MM);
    line = LINE * scale.fontPx(Scale.SMALL_MM) * scale.textFactor();
    getChildren().addAll(front, seen, rear);
    setMouseTransparent(true);
    setManaged(false);
  }

  void tell(Layout layout, View view) {
    boolean open = view == View.BELOW && !layout.mainCaps();
    seen.setWords(open ? "case open" : view == View.ABOVE ? "from above" : "from below");
  }

  private double ends() {
    return front.prefWidth(-1) + APART * line + rear.prefWidth(-1);
  }

  /** How wide they are at least. */
  double least() {
    return Math.max(ends(), seen.prefWidth(-1));
  }

  /** How wide so many of them are at least. */
  double least(Shown what) {
    return switch (what) {
      case ALL -> least();
      case ENDS -> ends();
      case FRONT_ABOVE -> front.prefWidth(-1);
      case BESIDE, FRONT -> left(what) + right(what);
    };
  }

  /** What they take on the left of a drawing. */
  double left(Shown what) {
    return what.isBeside() ? front.prefWidth(-1) + between : 0;
  }

  /** What they take on the right of a drawing. */
  double right(Shown what) {
    return what == Shown.BESIDE ? rear.prefWidth(-1) + between : 0;
  }

  private boolean isInOneLine(double width) {
    double free = width - front.prefWidth(-1) - rear.prefWidth(-1);
    return free >= seen.prefWidth(-1) + 2 * between;
  }

  /** How high they are over a drawing of this width. */
  double height(double width) {
    return isInOneLine(width) ? line : 2 * line;
  }

  /** How high so many of them are over a drawing of this width. */
  double height(Shown what, double width) {
    return switch (what) {
      case ALL -> height(width);
      case ENDS, FRONT_ABOVE -> line;
      case BESIDE, FRONT -> 0;
    };
  }

  /** Shows so many of them. */
  void show(Shown what) {
    shown = what;
    requestLayout();
  }

  /** Puts them to a drawing, within a room of this width. */
  void put(Bounds frame, double room) {
    if (shown.isBeside()) {
      double x = frame.x() - left(shown);
      double wide = left(shown) + (shown == Shown.FRONT ? 0 : frame.width() + right(shown));
      resizeRelocate(x, frame.y() + (frame.height() - line) / 2, wide, line);
    } else {
      over(frame, room);
    }
  }

  private void over(Bounds frame, double room) {
    double width = Math.min(room, Math.max(frame.width(), least(shown)));
    double x = Math.max(0, Math.min(room - width, frame.middleX() - width / 2));
    double height = height(shown, width);
    resizeRelocate(x, frame.y() - height, width, height);
  }

  /**
   * An arrow that comes from above has its shaft among the captions: that piece is left free.
   *
   * @param pointing the box of what points into the drawing, beside these captions' own
   */
  void keepFree(Optional<javafx.geometry.Bounds> pointing) {
    Optional<javafx.geometry.Bounds> box =
        pointing
            .filter(arrow -> !shown.isBeside())
            .filter(arrow -> arrow.getMinY() < getLayoutY() + getHeight());
    keptFrom = box.map(arrow -> arrow.getMinX() - getLayoutX()).orElse(0.0);
    keptTo = box.map(arrow -> arrow.getMaxX() - getLayoutX()).orElse(-1.0);
    requestLayout();
  }

  /** Where the middle words begin; negative where they have no room. */
  private double seenAt(double wide, double from, double to) {
    double middle = (from + to - wide) / 2;
    boolean free = keptTo <= keptFrom || middle + wide <= keptFrom || middle >= keptTo;
    if (free) {
      return middle;
    }
    double right = keptTo + between;
    double left = keptFrom - between - wide;
    return right + wide + between <= to ? right : left - between >= from ? left : -1;
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double y = getHeight() - line;
    Panes.place(front, 0, y, front.prefWidth(-1), line);
    double rearWide = rear.prefWidth(-1);
    Panes.place(rear, width - rearWide, y, rearWide, line);
    rear.setVisible(shown != Shown.FRONT && shown != Shown.FRONT_ABOVE);
    if (shown != Shown.ALL) {
      seen.setVisible(false);
      return;
    }
    double wide = seen.prefWidth(-1);
    double left = front.prefWidth(-1);
    boolean oneLine = isInOneLine(width);
    double x = seenAt(wide, oneLine ? left : 0, oneLine ? width - rearWide : width);
    seen.setVisible(x >= 0);
    Panes.place(seen, Math.max(0, x), 0, wide, line);
  }
}
