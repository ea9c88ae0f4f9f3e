package wherefrom.ui.measure;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;

/**
 * A heading, and below it as many lines as there is room for, the first of them before the others.
 * What is left out must be told elsewhere.
 */
final class SaidAsFits extends Region {
  private final FitText heading;
  private final List<FitText> lines;
  private final double gap;

  SaidAsFits(Scale scale, FitText heading, List<FitText> lines) {
    this.heading = heading;
    this.lines = List.copyOf(lines);
    gap = scale.px(1);
    getChildren().add(heading);
    getChildren().addAll(lines);
    Panes.grow(this);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    double least = heading.minWidth(-1);
    for (FitText line : lines) {
      least = Math.max(least, line.minWidth(-1));
    }
    return least;
  }

  @Override
  protected double computeMinHeight(double width) {
    return heading.minHeight(width);
  }

  @Override
  protected double computePrefHeight(double width) {
    double sum = heading.prefHeight(width);
    for (FitText line : lines) {
      sum += gap + line.prefHeight(width);
    }
    return sum;
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    boolean roomy = prefHeight(width) <= getHeight();
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
