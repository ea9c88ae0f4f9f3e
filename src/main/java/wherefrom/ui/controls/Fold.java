package wherefrom.ui.controls;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.Region;

/**
 * Words and a drawing: side by side or one above the other where both have room; else one of the
 * two, with a key that shows the other.
 */
public final class Fold extends Region {
  /** Beside a drawing the words have at least this part of the width: a column of words is none. */
  private static final double LEAST_PART = 0.25;

  private final double gap;
  private final Region words;
  private final Region drawing;
  private final TouchKey other;
  private final String toDrawing;
  private boolean drawn;

  /**
   * @param toDrawing what stands on the key that shows the drawing
   */
  public Fold(Touch touch, Region words, Region drawing, String toDrawing) {
    this.toDrawing = toDrawing;
    this.gap = touch.scale().gap();
    this.words = words;
    this.drawing = drawing;
    this.other = touch.key("", this::turn);
    getChildren().setAll(words, drawing);
    Panes.grow(this);
  }

  private void turn() {
    drawn = !drawn;
    requestLayout();
  }

  /** Turns to the words, where one of the two is seen at a time: they say what must be read now. */
  public void showWords() {
    drawn = false;
    requestLayout();
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinHeight(double width) {
    return Math.max(words.minHeight(width), drawing.minHeight(width))
        + gap
        + other.minHeight(width);
  }

  @Override
  protected double computePrefHeight(double width) {
    return words.prefHeight(width) + gap + drawing.prefHeight(width);
  }

  @Override
  protected double computeMaxHeight(double width) {
    return Double.MAX_VALUE;
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double wide = besideWidth(width);
    if (wide > 0) {
      put(List.of(words, drawing));
      Panes.place(drawing, 0, 0, wide, getHeight());
      Panes.place(words, wide + gap, 0, Math.floor(width - gap - wide), getHeight());
      return;
    }
    double lower = drawing.prefHeight(width);
    double upper = words.minHeight(width);
    if (upper + gap + lower <= getHeight()) {
      put(List.of(words, drawing));
      double above = Math.floor(getHeight() - gap - lower);
      Panes.place(words, 0, 0, width, above);
      Panes.place(drawing, 0, above + gap, width, lower);
      return;
    }
    other.setWords(drawn ? "Show the words" : toDrawing);
    double key = Math.ceil(other.minHeight(width));
    put(List.of(drawn ? drawing : words, other));
    double above = Math.floor(getHeight() - gap - key);
    Panes.place((drawn ? drawing : words), 0, 0, width, above);
    Panes.place(other, 0, above + gap, width, key);
  }

  /** How wide the drawing is beside the words: half, or as it needs; 0 where both lack room. */
  private double besideWidth(double width) {
    double least = Math.ceil(drawing.minWidth(-1));
    double half = Math.floor((width - gap) / 2);
    if (half > least && fitBeside(width, half)) {
      return half;
    }
    return fitBeside(width, least) ? least : 0;
  }

  private boolean fitBeside(double width, double wide) {
    double left = width - gap - wide;
    return wide > 0
        && left >= Math.max(LEAST_PART * width, words.minWidth(-1))
        && words.minHeight(left) <= getHeight()
        && drawing.minHeight(wide) <= getHeight();
  }

  private void put(List<? extends Node> shown) {
    if (!getChildren().equals(shown)) {
      getChildren().setAll(shown);
      shown.forEach(Node::applyCss);
    }
  }
}
