package wherefrom.ui.controls;

import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;

/** A key that asks for something: what is asked on the left, what is chosen now on the right. */
public final class AskKey extends Region {
  private final FitText asked;
  private final FitText now;
  private final double least;
  private final double padding;
  private final double gap;

  private AskKey(Touch touch, String question) {
    asked = touch.small(question).align(Pos.CENTER_LEFT);
    asked.getStyleClass().add("second");
    now = touch.fit("", Scale.WORKING_MM, Scale.SMALL_MM, true).align(Pos.CENTER_RIGHT);
    least = touch.scale().px(Scale.KEY_MM);
    padding = touch.scale().px(3.7);
    gap = touch.scale().px(2.7);
    getStyleClass().addAll("key", "plain");
    getChildren().setAll(asked, now);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    setAccessibleRole(AccessibleRole.BUTTON);
  }

  public static AskKey key(Touch touch, String question, Runnable act) {
    return touch.target(new AskKey(touch, question), act);
  }

  /** Says what is chosen now. */
  public void say(String chosen) {
    now.setWords(chosen);
    setAccessibleText(asked.words() + ", " + chosen);
    requestLayout();
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  private double inner(double width) {
    return width - 2 * padding - asked.leastLineWidth() - gap;
  }

  /** Where both have no room beside each other, what is chosen stands alone. */
  private boolean isAsked(double width) {
    return inner(width) >= now.minWidth(-1);
  }

  private double room(double width) {
    return isAsked(width) ? inner(width) : width - 2 * padding;
  }

  @Override
  protected double computeMinWidth(double height) {
    return Math.max(least, now.minWidth(-1) + 2 * padding);
  }

  @Override
  protected double computePrefWidth(double height) {
    return computeMinWidth(height);
  }

  @Override
  protected double computeMinHeight(double width) {
    double words = width <= 0 ? 0 : now.minHeight(room(width));
    return Math.max(least, words + padding);
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double top = padding / 2;
    double high = getHeight() - padding;
    asked.setVisible(isAsked(width));
    Panes.place(asked, padding, top, asked.leastLineWidth(), high);
    double wide = room(width);
    Panes.place(now, width - padding - wide, top, wide, high);
  }
}
