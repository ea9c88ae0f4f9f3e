package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.geometry.Dimension2D;
import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.rules.Verdict;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.ScreenAnswer;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/**
 * A stop over the whole glass: its lines, the tag that leads out of it, where both places are, and
 * apart from the tag what overrules it. Every key has one place; UNDO keeps its corner. A message
 * stands below the tag and covers nothing: where there is no room for it, what overrules the stop
 * goes meanwhile, or the tag, where what overrules it is pointed at.
 */
final class StopView extends Region {
  private static final double PANEL = 0.5;
  private static final double UPRIGHT_PANEL = 0.38;
  private static final double ALONE = 0.62;
  private static final double RIGHT = 0.4175;
  private static final double LEAST_PICTURE_MM = 40;

  private final Touch touch;
  private final WaysOut ways;
  private final Supplier<Dimension2D> corner;
  private Optional<ScreenAnswer> answer = Optional.empty();
  private Optional<StopPanel> panel = Optional.empty();
  private Optional<Region> picture = Optional.empty();
  private Optional<Verdict> pictured = Optional.empty();
  private Optional<StopTag> tag = Optional.empty();
  private Optional<StopRow> keys = Optional.empty();
  private final TouchKey more;
  private String message = "";
  private boolean upright;

  /**
   * @param corner what UNDO takes of the lower corner
   */
  StopView(Touch touch, WaysOut ways, Supplier<Dimension2D> corner) {
    this.touch = touch;
    this.ways = ways;
    this.corner = corner;
    more = touch.key("More", ways::more);
    Panes.grow(this);
  }

  void show(PutTogetherModel model) {
    answer = Optional.of(model.answer());
    List<Region> made = new StopKeys(touch, ways, isTight()).of(model);
    keys = Optional.of(new StopRow(touch, made)).filter(row -> !made.isEmpty());
    model.stop().filter(stop -> !pictured.equals(Optional.of(stop))).ifPresent(stop -> draw(model));
    tag = Optional.of(new StopTag(touch, ways, model, message));
    fill();
  }

  /** With the largest letters words and keys take all the width. */
  private boolean isTight() {
    return StopTag.isTight(touch);
  }

  /** The picture, where words and keys leave it room: with the largest letters on upright glass. */
  private Optional<Region> picture() {
    return picture.filter(drawn -> !isTight() || upright);
  }

  /** The picture of a stop stays as it is while the stop does. */
  private void draw(PutTogetherModel model) {
    pictured = model.stop();
    picture = pictured.flatMap(stop -> StopPicture.of(touch, model.state(), stop));
  }

  /** Shows a sentence below the tag; empty where there is nothing to say. */
  void message(String sentence) {
    if (!message.equals(sentence)) {
      message = sentence;
      tag.ifPresent(key -> key.say(sentence));
      requestLayout();
    }
  }

  private void fill() {
    StopPanel words = new StopPanel(touch, answer.orElseThrow(), upright);
    panel = Optional.of(words);
    List<Region> all = new ArrayList<>(List.of(words));
    tag.ifPresent(all::add);
    picture().ifPresent(all::add);
    keys.ifPresent(all::add);
    all.add(more);
    getChildren().setAll(all);
    all.forEach(Region::applyCss);
    requestLayout();
  }

  @Override
  protected double computeMinWidth(double height) {
    double lines = panel.map(words -> words.minWidth(-1)).orElse(0.0);
    double row =
        keys.map(made -> made.minWidth(-1) + corner.get().getWidth() + apart()).orElse(0.0);
    return Math.max(Math.max(lines, row), tag.map(key -> key.minWidth(-1)).orElse(0.0));
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinHeight(double width) {
    if (width <= 0) {
      return 0;
    }
    double words = panel.map(shown -> shown.minHeight(width)).orElse(0.0);
    if (upright) {
      return words + belowUpright(width);
    }
    double wide = Math.max(1, rowWidth(width));
    return words + gap() + Math.max(tagLeast(wide) + keysLeast(wide), twoKeys());
  }

  @Override
  protected void layoutChildren() {
    boolean stands = getHeight() > getWidth();
    if (stands != upright && answer.isPresent()) {
      upright = stands;
      fill();
    }
    if (panel.isEmpty()) {
      return;
    }
    double least = panel.get().minHeight(getWidth());
    double high = Math.max(least, panelHigh());
    double below = upright ? belowUpright(getWidth()) : belowBeside();
    high = Math.max(least, Math.min(high, getHeight() - below));
    Panes.place(panel.get(), 0, 0, getWidth(), high);
    double top = Math.floor(high) + gap();
    if (upright) {
      layUpright(top);
    } else {
      layBeside(top);
    }
  }

  /** Upright, a picture is worth less than large words that say why. */
  private double panelHigh() {
    double share = upright ? UPRIGHT_PANEL : PANEL;
    if (upright && touch.isLarge() && picture.isPresent()) {
      double words = panel.map(shown -> shown.prefHeight(getWidth())).orElse(0.0);
      if (pictureHigh(words) >= leastPictureHigh()) {
        return words;
      }
      share = words <= alone() ? ALONE : share;
    }
    return (picture().isPresent() ? share : ALONE) * getHeight();
  }

  /** How high the panel may be on upright glass without a picture. */
  private double alone() {
    return Math.min(ALONE * getHeight(), getHeight() - belowUpright(getWidth()));
  }

  /** What is left for the picture on upright glass below a panel of this height. */
  private double pictureHigh(double panelHigh) {
    double row = Math.max(corner.get().getHeight(), keysHigh(rowWidth(getWidth())));
    double tagHigh = tag.map(key -> key.prefHeight(getWidth())).orElse(0.0);
    return getHeight() - panelHigh - tagHigh - row - 3 * gap() - 1;
  }

  private double leastPictureHigh() {
    return 0.8 * touch.scale().px(LEAST_PICTURE_MM);
  }

  private double gap() {
    return touch.scale().gap();
  }

  private double apart() {
    return Math.ceil(touch.scale().px(Scale.DANGER_GAP_MM));
  }

  private double keysHigh(double width) {
    return keys.map(row -> row.minHeight(width)).orElse(0.0);
  }

  /** What the tag and the keys on the right need at least below the panel. */
  private double belowBeside() {
    double wide = rightWidth();
    return gap()
        + Math.max(tagLeast(wide) + keysRow(Math.min(wide, rowWidth(getWidth()))), twoKeys());
  }

  /** More above UNDO, and apart from it. */
  private double twoKeys() {
    return 2 * corner.get().getHeight() + apart();
  }

  /** What the keys take below the tag, with what parts them from it. */
  private double keysRow(double wide) {
    return keys.isEmpty() ? 0 : keysHigh(wide) + apart();
  }

  /** What the keys take at least: nothing beside a message, which may need their room. */
  private double keysLeast(double wide) {
    return tag.filter(StopTag::hasMessage).isPresent() ? 0 : keysRow(wide);
  }

  private double tagLeast(double wide) {
    return tag.map(key -> key.minHeight(wide)).orElse(0.0);
  }

  /** Where the tag leaves no room for the picture it takes all that there is. */
  private double rightWidth() {
    double all = besideCorner();
    double wanted = Math.max(RIGHT * getWidth(), keys.map(StopRow::wideEnough).orElse(0.0));
    double line = tag.map(key -> key.prefWidth(-1)).orElse(getWidth());
    double liked = Math.ceil(touch.isLarge() ? Math.max(wanted, line) : wanted);
    double wide = Math.min(all, liked); // Whole pixels: a part of one less breaks the row of keys.
    boolean said = tag.filter(StopTag::hasMessage).isPresent();
    boolean drawn = picture().isPresent() && (said ? !touch.isLarge() : leavesKeys(wide));
    boolean room = drawn && all - wide - gap() >= touch.scale().px(LEAST_PICTURE_MM);
    return room ? wide : all;
  }

  /** Whether the tag and all keys have room in a column so wide: no picture costs a key. */
  private boolean leavesKeys(double wide) {
    double least = panel.map(words -> words.minHeight(getWidth())).orElse(0.0);
    double below = tagLeast(wide) + keysRow(Math.min(wide, rowWidth(getWidth())));
    return least + gap() + below <= getHeight();
  }

  private double besideCorner() {
    return Math.floor(getWidth() - corner.get().getWidth() - gap());
  }

  /** What the keys have of a row in which UNDO is, from which they keep apart. */
  private double rowWidth(double width) {
    return Math.floor(width - corner.get().getWidth() - apart());
  }

  private void layBeside(double top) {
    double left = corner.get().getWidth() + gap();
    double beside = getWidth() - rightWidth() - gap() - left;
    double wide = hasPicture(beside, getHeight() - top) ? rightWidth() : besideCorner();
    double x = getWidth() - wide;
    double row = Math.min(wide, rowWidth(getWidth()));
    double high = keysHigh(row);
    boolean crowded = tagLeast(wide) + keysRow(row) > getHeight() - top;
    boolean pointed = crowded && keys.filter(StopRow::isPointed).isPresent();
    double room = getHeight() - top - (crowded && !pointed ? 0 : keysRow(row));
    tag.ifPresent(key -> key.alone(pointed));
    tag.ifPresent(key -> Panes.place(key, x, top, wide, Math.min(key.prefHeight(wide), room)));
    keys.ifPresent(made -> made.setVisible(!crowded || pointed));
    keys.ifPresent(made -> Panes.place(made, getWidth() - row, getHeight() - high, row, high));
    putMore(0, top);
    putPicture(left, top, x - gap() - left, getHeight() - top);
  }

  private double belowUpright(double wide) {
    double row = Math.max(corner.get().getHeight(), keysHigh(rowWidth(wide)));
    return gap() + tagLeast(wide) + gap() + corner.get().getHeight() + apart() + row;
  }

  private void layUpright(double top) {
    double wide = getWidth();
    double row = Math.max(corner.get().getHeight(), keysHigh(rowWidth(wide)));
    double room = getHeight() - top - gap() - corner.get().getHeight() - apart() - row;
    double tagHigh = tag.map(key -> Math.min(key.prefHeight(wide), room)).orElse(0.0);
    tag.ifPresent(key -> Panes.place(key, 0, top, wide, tagHigh));
    tag.ifPresent(key -> key.alone(false));
    keys.ifPresent(shown -> shown.setVisible(true));
    keys.ifPresent(shown -> Panes.place(shown, 0, getHeight() - row, rowWidth(wide), row));
    double under = top + tagHigh + gap();
    double aside = wide - corner.get().getWidth();
    putMore(aside, getHeight() - row - apart() - corner.get().getHeight());
    putPicture(0, under, aside - gap(), getHeight() - under - row - gap());
  }

  /** Above UNDO, and apart from it; its place is the same on every stop. */
  private void putMore(double x, double top) {
    Panes.place(more, x, top, corner.get().getWidth(), corner.get().getHeight());
  }

  private boolean hasPicture(double wide, double high) {
    boolean least = wide >= touch.scale().px(LEAST_PICTURE_MM) && high >= leastPictureHigh();
    return least && picture().filter(in -> StopPicture.fits(in, wide, high)).isPresent();
  }

  private void putPicture(double x, double y, double wide, double high) {
    boolean room = hasPicture(wide, high);
    picture.ifPresent(shown -> shown.setVisible(room));
    picture.filter(shown -> room).ifPresent(shown -> Panes.place(shown, x, y, wide, high));
  }
}
