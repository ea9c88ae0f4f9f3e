package wherefrom.ui.controls;

import javafx.scene.Node;
import javafx.scene.layout.Region;

/**
 * A tag that cannot be pressed: a scanned part, a chosen idea, the head of a page. It has a thin
 * frame and no eyelet.
 */
public final class PaperTag extends Region {
  private static final double FRAME_MM = 0.6;

  private final TagShape shape;
  private final Node content;
  private final double frame;
  private final double padding;

  /**
   * @param content what stands on it
   */
  public PaperTag(Scale scale, Node content) {
    this.frame = scale.px(FRAME_MM);
    this.shape = new TagShape(this, scale, frame);
    this.content = content;
    this.padding = scale.px(2.7);
    getStyleClass().add("paper-tag");
    getChildren().add(content);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  /** Its corners are cut by at most half of this on the left. */
  private double left(double height) {
    return shape.cut(height) / 2 + frame + padding;
  }

  @Override
  protected double computePrefHeight(double width) {
    double flat = content.prefHeight(inner(width, 0)) + 2 * (padding + frame);
    return content.prefHeight(inner(width, flat)) + 2 * (padding + frame);
  }

  @Override
  protected double computeMinHeight(double width) {
    double flat = content.minHeight(inner(width, 0)) + 2 * (padding + frame);
    return content.minHeight(inner(width, flat)) + 2 * (padding + frame);
  }

  /** What the cut corners of a tag of this height leave. */
  private double inner(double width, double height) {
    return width < 0 ? -1 : Math.max(0, width - left(height) - padding - frame);
  }

  @Override
  protected double computePrefWidth(double height) {
    double high = height < 0 ? content.prefHeight(-1) : height;
    return content.prefWidth(-1) + left(high) + padding + frame;
  }

  @Override
  protected double computeMinWidth(double height) {
    double high = height < 0 ? content.prefHeight(-1) : height;
    return content.minWidth(-1) + left(high) + padding + frame;
  }

  @Override
  protected void layoutChildren() {
    shape.fit();
    double left = left(getHeight());
    double edge = frame + padding;
    Panes.place(
        content,
        left,
        edge,
        Math.max(0, getWidth() - left - edge),
        Math.max(0, getHeight() - 2 * edge));
  }
}
