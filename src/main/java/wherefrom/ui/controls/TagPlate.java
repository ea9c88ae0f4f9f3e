package wherefrom.ui.controls;

import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;

/**
 * A tag with an eyelet and something drawn or written on it: a key when {@link Touch#target} has
 * made it one. The one thing to do is on paper with a heavy frame, anything else on a plate.
 */
public final class TagPlate extends Region {
  private static final double HEAVY_MM = 1.4;
  private static final double THIN_MM = 0.5;
  private static final double EYE_MM = 2.2;
  private static final double EYE_LINE_MM = 0.85;
  private static final double PADDING_MM = 2.7;

  /** What stands on the least tag keeps this from its frame. */
  private static final double LEAST_PADDING_MM = 0.9;

  private final TagShape shape;
  private final Region content;
  private final Circle eyelet;
  private final double eye;
  private final double edge;
  private final double leastEdge;
  private final double leastHeight;

  /**
   * @param main whether it is the one thing to do
   * @param spoken what a screen reader says
   */
  public TagPlate(Scale scale, Region content, boolean main, String spoken) {
    double frame = scale.px(main ? HEAVY_MM : THIN_MM);
    this.shape = new TagShape(this, scale, frame);
    this.content = content;
    this.eye = scale.px(EYE_MM);
    this.edge = frame + scale.px(PADDING_MM);
    this.leastEdge = frame + scale.px(LEAST_PADDING_MM);
    this.leastHeight = Math.ceil(scale.px(Scale.KEY_MM));
    this.eyelet = new Circle(eye);
    eyelet.getStyleClass().add("tag-eyelet");
    eyelet.setStrokeWidth(scale.px(EYE_LINE_MM));
    eyelet.setManaged(false);
    eyelet.setMouseTransparent(true);
    content.setMouseTransparent(true);
    getStyleClass().add(main ? "tag-key" : "tag-second");
    getChildren().setAll(eyelet, content);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    setAccessibleRole(AccessibleRole.BUTTON);
    setAccessibleText(spoken);
  }

  private double left(double height) {
    return shape.cut(height) / 2 + 2.2 * eye + edge;
  }

  private double inner(double width) {
    return width < 0 ? -1 : Math.max(0, width - left(Double.MAX_VALUE) - edge);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return content.minWidth(-1) + left(Double.MAX_VALUE) + edge;
  }

  @Override
  protected double computePrefWidth(double height) {
    return content.prefWidth(-1) + left(Double.MAX_VALUE) + edge;
  }

  @Override
  protected double computeMinHeight(double width) {
    return Math.max(leastHeight, content.minHeight(inner(width)) + 2 * leastEdge);
  }

  @Override
  protected double computePrefHeight(double width) {
    return content.prefHeight(inner(width)) + 2 * edge;
  }

  @Override
  protected void layoutChildren() {
    double height = getHeight();
    shape.fit();
    eyelet.setCenterX(shape.cut(height) / 2 + eye);
    eyelet.setCenterY(height / 2);
    double left = left(height);
    double wide = Math.max(0, getWidth() - left - edge);
    double spare = (height - content.prefHeight(wide)) / 2;
    double above = Math.max(leastEdge, Math.min(edge, spare));
    Panes.place(content, left, above, wide, Math.max(0, height - 2 * above));
  }
}
