package wherefrom.ui.takeapart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.drawn.EngineView;

/**
 * The part that comes out next: its place to be read from afar, what to mark, the tag that says it
 * is out; the drawing; the part large with the way it comes out; the keys. Once a part has come out
 * that stands in the place of the name, and the keys say that they mean it; nothing else moves.
 */
final class NextView extends Region {
  private static final double HEAD_MM = 25.4;
  private static final double TAG_MM = 64.4;
  private static final double SIDE_MM = 47;
  private static final double NARROW_MM = 120;

  /** So many times the tag wide is the glass where large letters leave room beside the name. */
  private static final double ROOMY = 2.8;

  private static final double LARGE_TAG = 0.42;

  /** Keys with the part's name may be so much higher than those without. */
  private static final double NAMED_MM = 13;

  private final Touch touch;
  private final double gap;
  private final FitText place;
  private final FitText what;
  private final FitText mark;
  private final TagKey tag;
  private final EngineView engine;
  private final Tiles plain;
  private final Tiles named;
  private final Tiles inOneLine;
  private final FitText way;
  private final FitText wayMarked;
  private final OutPanel panel;
  private Optional<Region> shape = Optional.empty();
  private boolean out;

  /**
   * @param keys three times: in few words; with the part that each means, for where they have room;
   *     the few words unbroken, for where they are no higher so
   */
  NextView(Touch touch, TagKey tag, EngineView engine, List<Tiles> keys) {
    this.touch = touch;
    this.gap = touch.scale().gap();
    this.tag = tag;
    this.engine = engine;
    plain = keys.get(0);
    named = keys.get(1);
    inOneLine = keys.get(2);
    panel = new OutPanel(touch);
    place = touch.verdict("").tight();
    what = touch.heading("");
    mark = touch.small("");
    mark.getStyleClass().add("second");
    way = touch.small("").centred();
    wayMarked = touch.small("").centred();
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  /** What came out last, in words; empty where nothing has yet. */
  void out(Optional<String> words) {
    out = words.isPresent();
    words.ifPresent(panel::show);
  }

  /**
   * How a part comes out.
   *
   * @param toMark what to mark on it; may be empty
   * @param way off or out
   * @param both what to mark and the way, in their order
   */
  record HowOut(String toMark, String way, String both) {}

  /**
   * Shows a part.
   *
   * @param large the part, drawn
   */
  void show(PartName name, HowOut how, Region large) {
    show(name.place(), name.what(), how, large);
  }

  /**
   * Shows what comes out.
   *
   * @param at its place, to be read from afar
   * @param named what of it
   */
  void show(String at, String named, HowOut how, Region large) {
    place.setWords(at.replace(' ', '\u00a0'));
    what.setWords(named);
    mark.setWords(how.toMark());
    way.setWords(how.way());
    wayMarked.setWords(how.both());
    shape = Optional.of(large);
    fill(large);
  }

  /** Nothing is left to take out. */
  void showNothing(String words) {
    place.setWords("");
    what.setWords("");
    mark.setWords(words);
    way.setWords("");
    wayMarked.setWords("");
    shape = Optional.empty();
    fill();
  }

  private void fill(Region... large) {
    // The drawing's many zones come last when a key leads from one to the next.
    List<Region> shown = new ArrayList<>(List.of(tag, plain, named, inOneLine));
    shown.addAll(out ? List.of(panel) : List.of(place, what, mark));
    shown.addAll(List.of(way, wayMarked));
    shown.addAll(List.of(large));
    shown.add(engine);
    getChildren().setAll(shown);
    requestLayout();
  }

  private boolean isUpright() {
    return getHeight() > getWidth();
  }

  private boolean isStacked() {
    return isUpright() || (touch.isLarge() && !isRoomy());
  }

  /** Wide glass has room for the tag beside the name in large letters too. */
  private boolean isRoomy() {
    return !isNamedOnTag(touch) && getWidth() >= ROOMY * lettered(TAG_MM);
  }

  /** How wide the tag is beside the name: what large letters say more needs more. */
  private double besideName() {
    return Math.max(lettered(TAG_MM), touch.isLarge() ? LARGE_TAG * getWidth() : 0);
  }

  /** What grows with the letters, in pixels. */
  private double lettered(double mm) {
    return touch.scale().px(mm) * touch.scale().textFactor();
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    double least = Math.max(plain.minWidth(-1), tag.minWidth(-1));
    return Math.max(least, touch.scale().px(NARROW_MM));
  }

  @Override
  protected double computeMinHeight(double width) {
    double head = leastHead(width);
    // Narrow as it is beside the camera, the tag has a row of its own.
    boolean below = isStacked() || (width > 0 && width < touch.scale().px(NARROW_MM));
    double tagHigh = below ? tag.minHeight(width) + gap : 0;
    return head + tagHigh + engine.minHeight(width) + few(width).minHeight(width) + 2 * gap;
  }

  /** With large letters the tag names the part alone: the head is for what came out. */
  private double leastHead(double width) {
    if (!touch.isLarge() || !isStacked()) {
      return headHeight();
    }
    return out ? panel.minHeight(width) : 0;
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double tagWide = isStacked() ? width : besideName();
    double tagHigh = Math.max(touch.scale().px(Scale.PRIMARY_MM), tag.minHeight(tagWide));
    Tiles keys = keys(width, tagHigh);
    double low = keys.minHeight(width);
    double rest = low + gap + (isStacked() ? tagHigh + gap : 0) + engine.minHeight(width) + gap;
    double head = headHigh(width, getHeight() - rest);
    head(isStacked() ? width : width - tagWide - gap, head);
    double top = head > 0 ? head + gap : 0;
    if (isStacked()) {
      Panes.place(tag, 0, top, width, tagHigh);
      top += tagHigh + gap;
    } else {
      Panes.place(tag, width - tagWide, 0, tagWide, head);
    }
    Panes.place(keys, 0, getHeight() - low, width, low);
    middle(top, getHeight() - low - gap - top);
  }

  /** The keys in few words: unbroken, where the others are as high. */
  private Tiles few(double width) {
    boolean any = !inOneLine.getChildrenUnmodifiable().isEmpty();
    boolean fits = any && inOneLine.minWidth(-1) <= width;
    return fits && inOneLine.minHeight(width) <= plain.minHeight(width) ? inOneLine : plain;
  }

  /** The keys with the part's name, where they and the drawing have room. */
  private Tiles keys(double width, double tagHigh) {
    Tiles few = few(width);
    double low = few.minHeight(width);
    double high = named.minHeight(width);
    double others = headHeight() + (isStacked() ? tagHigh + gap : 0) + 2 * gap;
    double rest = getHeight() - others;
    boolean any = !named.getChildrenUnmodifiable().isEmpty();
    boolean near = high <= low + touch.scale().px(NAMED_MM);
    boolean room = any && near && engine.minHeight(width) + high <= rest;
    // The names are worth less than the drawing.
    boolean names = room && (isDrawn(rest - high) || !isDrawn(rest - low));
    Tiles shown = names ? named : few;
    List.of(plain, named, inOneLine).forEach(keys -> keys.setVisible(keys == shown));
    return shown;
  }

  private boolean isDrawn(double high) {
    double side = isStacked() ? 0 : lettered(SIDE_MM) + gap;
    return engine.hasRoom(getWidth() - side, high);
  }

  /** With the largest text for its glass the tag names the part, and nothing else does. */
  static boolean isNamedOnTag(Touch touch) {
    return touch.isLarge() && touch.scale().textFactor() >= 2;
  }

  /** Beside the name stands the tag, whose words may need more. */
  private double headHeight() {
    double beside = isStacked() ? 0 : tag.minHeight(besideName());
    return isNamedOnTag(touch) && !out ? 0 : Math.max(beside, touch.scale().px(HEAD_MM));
  }

  /** The name leaves where it lacks room beside large letters: the tag says it as well. */
  private double headHigh(double width, double room) {
    double high = Math.max(leastHead(width), Math.min(headHeight(), room));
    boolean named = !place.words().isEmpty() && high >= place.minHeight(-1);
    return isStacked() && touch.isLarge() && !out && !named ? 0 : high;
  }

  private void head(double width, double high) {
    panel.setVisible(high > 0);
    Panes.place(panel, 0, 0, width, high);
    next(width, high);
  }

  /** The place in letters of 20 mm, beside it the part and what to mark. */
  private void next(double width, double high) {
    for (FitText words : List.of(place, what, mark)) {
      words.setVisible(high > 0);
    }
    double share = 0.62 * width;
    double wide = Math.min(place.prefWidth(-1), place.minWidth(-1) <= share ? share : width);
    Panes.place(place, 0, 0, wide, high);
    double x = shape.isPresent() ? wide + gap : 0;
    double room = Math.max(1, width - x);
    double upper = Math.min(what.prefHeight(room), Math.max(0.55 * high, what.minHeight(room)));
    Panes.place(what, x, 0, room, upper);
    Panes.place(mark, x, upper, room, Math.max(1, high - upper));
    mark.setVisible(high > 0 && mark.fits(room, high - upper));
  }

  private void middle(double top, double high) {
    double side = isStacked() ? 0 : lettered(SIDE_MM);
    double wide = getWidth() - side - (side > 0 ? gap : 0);
    Panes.place(engine, 0, top, wide, Math.max(0, high));
    shape.ifPresent(large -> side(large, wide + gap, top, side, high));
  }

  private void side(Region large, double x, double top, double side, double high) {
    boolean isTold = side > 0;
    // What to mark is said with the way where it has no room beside the place.
    boolean marked = !mark.isVisible() && wayMarked.minHeight(side) <= high;
    FitText said = marked ? wayMarked : way;
    double words = isTold ? said.minHeight(side) : 0;
    double square = Math.min(large.prefHeight(-1), high - words);
    large.setVisible(isTold && square >= large.prefHeight(-1) - 1);
    way.setVisible(isTold && !marked);
    wayMarked.setVisible(isTold && marked);
    if (isTold) {
      double used = large.isVisible() ? square + words : words;
      double from = top + (high - used) / 2;
      Panes.place(large, x + (side - square) / 2, from, square, square);
      Panes.place(said, x, from + used - words, side, words);
    }
  }
}
