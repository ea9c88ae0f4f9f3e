package wherefrom.ui.drawn;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Group;
import javafx.scene.layout.Region;
import javafx.scene.transform.Rotate;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.Glass;
import wherefrom.drawing.KindOutline;
import wherefrom.drawing.Shape;
import wherefrom.ui.controls.Scale;

/** A pushrod that lies level, its top end at the left, as long as the room. It takes no touch. */
public final class LevelPushrod extends Region {
  private static final double HIGH_MM = 10;

  /** The tube; its ends are a little thicker. */
  private static final double TUBE = 0.8;

  private final Scale scale;
  private final double high;
  private double drawn;

  public LevelPushrod(Scale scale) {
    this.scale = scale;
    high = Math.ceil(scale.px(HIGH_MM));
    setMouseTransparent(true);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinHeight(double width) {
    return high;
  }

  @Override
  protected double computePrefHeight(double width) {
    return high;
  }

  @Override
  protected void layoutChildren() {
    if (getWidth() == drawn || getWidth() <= 0) {
      return;
    }
    drawn = getWidth();
    Glass glass = Glass.screen(scale.pixelsPerMm(), 1);
    double tube = TUBE * high;
    List<Shape> shapes = KindOutline.pushrod(new Bounds((high - tube) / 2, 0, tube, drawn), glass);
    Group level = new Group(new LookNode(shapes, DrawnAs.IN));
    // What lies at the top lies at the left then.
    level.getTransforms().setAll(new Rotate(-90, 0, 0));
    level.setLayoutY(high);
    level.setManaged(false);
    getChildren().setAll(level);
    level.applyCss();
  }
}
