package wherefrom.ui.puttogether;

import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.layout.Region;
import wherefrom.rules.WayOut;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Touch;

/** The tag that leads out of a stop, and below it what is to be said meanwhile. */
final class StopTag extends Region {
  /** Letters so large leave the tag room for its words alone, on all but large glass. */
  private static final double LARGEST_TEXT = 2;

  private final Touch touch;
  private final WaysOut ways;
  private final PutTogetherModel model;
  private final FitText message;
  private final double gap;
  private TagKey tag;

  /**
   * @param said what is to be said; empty for nothing
   */
  StopTag(Touch touch, WaysOut ways, PutTogetherModel model, String said) {
    this.touch = touch;
    this.ways = ways;
    this.model = model;
    gap = touch.scale().gap();
    message = touch.fit(said, Scale.SMALL_MM, Scale.SMALL_MM, true).align(Pos.CENTER_LEFT);
    tag = tag();
    getChildren().setAll(tag, message);
  }

  /** Where it is said that the last deed is not kept, the tag leads to that deed once more. */
  private TagKey tag() {
    WayOut first = model.stopped().first();
    return model.unkept().isPresent() && hasMessage()
        ? touch.tag("Do it again", more("it was not kept"), ways::again)
        : touch.tag(first.words(), more(first.more()), () -> ways.deed(first));
  }

  private String more(String words) {
    return isTight(touch) ? "" : words;
  }

  /** Whether words and keys take all the width. */
  static boolean isTight(Touch touch) {
    return touch.isLarge() && touch.scale().textFactor() >= LARGEST_TEXT;
  }

  /** Says something else; empty for nothing. */
  void say(String sentence) {
    message.setWords(sentence);
    tag = tag();
    getChildren().set(0, tag);
    applyCss();
    requestLayout();
  }

  /** Says whether the message stands alone, in the tag's place. */
  void alone(boolean isAlone) {
    tag.setVisible(!isAlone);
  }

  boolean hasMessage() {
    return !message.words().isEmpty();
  }

  /** The message's height with the gap above it. */
  private double told(double width) {
    return hasMessage() ? gap + Math.ceil(message.minHeight(width)) : 0;
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return Math.max(tag.minWidth(-1), hasMessage() ? message.minWidth(-1) : 0);
  }

  /** As wide as the tag wants to be: the message is broken into lines. */
  @Override
  protected double computePrefWidth(double height) {
    return tag.prefWidth(-1);
  }

  @Override
  protected double computeMinHeight(double width) {
    return tag.minHeight(width) + told(width);
  }

  @Override
  protected double computePrefHeight(double width) {
    return tag.prefHeight(width) + told(width);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double high = tag.isVisible() ? Math.floor(getHeight() - told(width)) : -gap;
    Panes.place(tag, 0, 0, width, Math.max(0, high));
    Panes.place(message, 0, high + gap, width, Math.max(0, getHeight() - high - gap));
  }
}
