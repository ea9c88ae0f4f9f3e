package wherefrom.ui.controls;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;

/**
 * The large lines of a verdict and the sentence close below them, in the middle of their room. The
 * sentence has the letters that were set before the lines grow.
 */
final class VerdictLines extends Region {
  /** By so much of its height the sentence gives way to the lines at a time. */
  private static final double STEP = 0.05;

  private final FitText lines;
  private final FitText sentence;
  private final double between;

  /**
   * @param sentence may be empty
   * @param between lines and sentence, in pixels
   */
  VerdictLines(FitText lines, FitText sentence, double between) {
    this.lines = lines;
    this.sentence = sentence;
    this.between = sentence.words().isEmpty() ? 0 : between;
    getChildren().setAll(lines, sentence);
    Panes.grow(this);
  }

  /** The height in which the sentence has the letters that were set, in pixels. */
  double likedHeight(double width) {
    return lines.minHeight(width) + (isAlone() ? 0 : between + sentence.prefHeight(width));
  }

  private boolean isAlone() {
    return sentence.words().isEmpty();
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return Math.max(lines.minWidth(-1), isAlone() ? 0 : sentence.minWidth(-1));
  }

  @Override
  protected double computeMinHeight(double width) {
    return lines.minHeight(width) + (isAlone() ? 0 : between + sentence.minHeight(width));
  }

  @Override
  protected double computePrefHeight(double width) {
    return lines.prefHeight(width) + (isAlone() ? 0 : between + sentence.prefHeight(width));
  }

  /** What the sentence takes of the height: it is never in larger letters than the lines. */
  private double sentenceHigh(double width, double most) {
    double least = Math.min(sentence.minHeight(width), most);
    double high = Math.max(0, most);
    while (high > least && isLouder(width, high)) {
      high = Math.max(least, high - STEP * most);
    }
    return high;
  }

  private boolean isLouder(double width, double high) {
    double left = getHeight() - between - high;
    return sentence.fit(width, high) > lines.fit(width, left);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double room = getHeight() - between - lines.minHeight(width);
    double low = isAlone() ? 0 : sentenceHigh(width, Math.min(sentence.prefHeight(width), room));
    double high = Math.min(lines.prefHeight(width), getHeight() - between - low);
    double top = Math.max(0, (getHeight() - high - between - low) / 2);
    Panes.place(lines, 0, top, width, high);
    Panes.place(sentence, 0, top + high + between, width, low);
  }
}
