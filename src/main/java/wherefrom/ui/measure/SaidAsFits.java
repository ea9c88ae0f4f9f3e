package wherefrom.ui.measure;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;

/**
 * A heading, whole or in fewer words, and below it as many lines as there is room for, the first of
 * them before the others. What is left out must be told elsewhere.
 */
final class SaidAsFits extends Region {
  private final List<FitText> headings;
  private final List<FitText> lines;
  private final double gap;

  /**
   * @param headings the same in fewer and fewer words; the last needs the least room
   */
  SaidAsFits(Scale scale, List<FitText> headings, List<FitText> lines) {
    this.headings = List.copyOf(headings);
    this.lines = List.copyOf(lines);
    gap = scale.px(1);
    getChildren().addAll(headings);
    getChildren().addAll(lines);
    Panes.grow(this);
  }

  private FitText brief() {
    return headings.get(headings.size() - 1);
  }

  private FitText heading() {
    return headings.stream()
        .filter(one -> one.minWidth(-1) <= getWidth())
        .filter(one -> one.minHeight(getWidth()) <= getHeight())
        .findFirst()
        .orElse(brief());
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    double least = brief().minWidth(-1);
    for (FitText line : lines) {
      least = Math.max(least, line.minWidth(-1));
    }
    return least;
  }

  @Override
  protected double computeMinHeight(double width) {
    return brief().minHeight(width);
  }

  @Override
  protected double computePrefHeight(double width) {
    double sum = headings.get(0).prefHeight(width);
    for (FitText line : lines) {
      sum += gap + line.prefHeight(width);
    }
    return sum;
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    boolean roomy = prefHeight(width) <= getHeight();
    FitText heading = heading();
    headings.forEach(one -> one.setVisible(one.equals(heading)));
    double down = put(heading, 0, roomy);
    boolean room = true;
    for (FitText line : lines) {
      room = room && down + gap + high(line, roomy) <= getHeight();
      line.setVisible(room);
      if (room) {
        down = put(line, down + gap, roomy);
      }
    }
  }

  private double high(FitText words, boolean roomy) {
    return roomy ? words.prefHeight(getWidth()) : words.minHeight(getWidth());
  }

  /** Where it ends. */
  private double put(FitText words, double from, boolean roomy) {
    double high = high(words, roomy);
    Panes.place(words, 0, from, getWidth(), high);
    return from + high;
  }
}
