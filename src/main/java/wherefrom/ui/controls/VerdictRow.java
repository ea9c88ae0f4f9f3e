package wherefrom.ui.controls;

import java.util.List;
import java.util.function.DoubleFunction;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.Region;

/** The figure of a verdict beside its words: as large as these let it be. */
final class VerdictRow extends Region {
  private final List<Double> sides;
  private final DoubleFunction<Node> maker;
  private final VerdictLines words;
  private final double between;
  private Node mark;
  private double side;

  /**
   * @param sides of the figure in pixels, the largest first
   * @param maker makes the figure of a side
   * @param between figure and words, in pixels
   */
  VerdictRow(List<Double> sides, DoubleFunction<Node> maker, VerdictLines words, double between) {
    this.sides = List.copyOf(sides);
    this.maker = maker;
    this.words = words;
    this.between = between;
    this.side = least();
    this.mark = maker.apply(side);
    getChildren().setAll(mark, words);
    Panes.grow(this);
  }

  private double least() {
    return sides.get(sides.size() - 1);
  }

  private double beside(double mark, double width) {
    return width - mark - between;
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return least() + between + words.minWidth(-1);
  }

  @Override
  protected double computeMinHeight(double width) {
    return Math.max(least(), words.minHeight(width <= 0 ? width : beside(least(), width)));
  }

  private boolean hasRoom(double mark) {
    double width = beside(mark, getWidth());
    return mark <= getHeight()
        && words.minWidth(-1) <= width
        && words.likedHeight(width) <= getHeight();
  }

  @Override
  protected void layoutChildren() {
    double now = sides.stream().filter(this::hasRoom).findFirst().orElse(least());
    if (now != side) {
      side = now;
      mark = maker.apply(now);
      getChildren().setAll(mark, words);
      mark.applyCss();
    }
    Panes.place(mark, 0, (getHeight() - side) / 2, side, side);
    Panes.place(words, side + between, 0, beside(side, getWidth()), getHeight());
  }
}
