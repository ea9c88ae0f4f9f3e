package wherefrom.ui.app;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.TagKey;

/**
 * The last row of a screen: the tag, and beside it the further keys, as many as leave the tag's
 * words in one line, six at most. On upright glass the keys are a row below the tag.
 */
public final class Foot extends Region {
  /** A key is no wider than this where it need not be. */
  private static final double KEY_MM = 30;

  /** Keys take no more of the row than this where they need not. */
  private static final double SHARE = 0.53;

  /** More keys beside a tag are a crowd: the others are behind the last. */
  private static final int MOST_KEYS = 6;

  private final TagKey tag;
  private final KeyRow keys;
  private final double gap;
  private final double usual;

  /**
   * @param keys the further keys; may be none
   */
  public Foot(ScreenContext context, TagKey tag, KeyRow keys) {
    this.tag = tag;
    this.keys = keys;
    this.gap = context.scale().gap();
    this.usual = context.scale().px(Math.max(KEY_MM, Scale.KEY_MM));
    getChildren().setAll(tag, keys);
  }

  /** Leaves the tag out, or has it again: there is not always a next thing to do. */
  public void offerTag(boolean offered) {
    tag.setVisible(offered);
    tag.setManaged(offered);
    requestLayout();
  }

  private boolean isStacked() {
    return tag.isManaged() && !keys.isEmpty() && Panes.isUpright(this);
  }

  /** How wide the keys are beside the tag. */
  private double keysWidth(double width) {
    if (keys.isEmpty() || !tag.isManaged()) {
      return keys.isEmpty() ? 0 : width;
    }
    double most = width - gap - tag.leastLineWidth();
    int count = Math.min(MOST_KEYS, keys.count());
    while (count > 1 && (keys.width(count) > most || isTall(count, width))) {
      count--;
    }
    return wide(count, width);
  }

  /** How wide so many keys are: not broken up where there is room. */
  private double wide(int count, double width) {
    double most = width - gap - tag.leastLineWidth();
    double roomy = Math.min(count * usual + (count - 1) * gap, SHARE * width);
    double wide = Math.max(keys.width(count), Math.min(roomy, most));
    while (wide + gap <= most && keys.highest(count, one(wide, count)) > tag.minHeight(-1)) {
      wide += gap;
    }
    return Math.floor(wide);
  }

  private double one(double wide, int count) {
    return (wide - (count - 1) * gap) / count;
  }

  /** Whether the words of so many keys are higher than the tag. */
  private boolean isTall(int count, double width) {
    return keys.highest(count, one(wide(count, width), count)) > tag.minHeight(-1) + 1;
  }

  private double tagWidth(double width) {
    return keys.isEmpty() ? width : Math.max(0, width - gap - keysWidth(width));
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return tag.minWidth(-1);
  }

  @Override
  protected double computeMinHeight(double width) {
    if (width <= 0) {
      return tag.minHeight(-1);
    }
    if (!tag.isManaged()) {
      return keys.isEmpty() ? 0 : keys.minHeight(width);
    }
    if (isStacked()) {
      return tag.minHeight(width) + gap + keys.minHeight(width);
    }
    double beside = keys.isEmpty() ? 0 : keys.minHeight(keysWidth(width));
    return Math.max(tag.minHeight(tagWidth(width)), beside);
  }

  @Override
  protected double computePrefHeight(double width) {
    return minHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    keys.setVisible(!keys.isEmpty());
    if (isStacked()) {
      double high = Math.ceil(tag.minHeight(width));
      Panes.place(tag, 0, 0, width, high);
      Panes.place(keys, 0, high + gap, width, getHeight() - high - gap);
      return;
    }
    double side = keysWidth(width);
    double high = tag.isManaged() ? Math.ceil(keys.minHeight(side)) : getHeight();
    Panes.place(tag, 0, 0, tagWidth(width), getHeight());
    Panes.place(keys, width - side, getHeight() - high, side, high);
  }
}
