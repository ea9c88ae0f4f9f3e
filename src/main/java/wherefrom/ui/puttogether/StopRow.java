package wherefrom.ui.puttogether;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/**
 * The keys of a stop that overrule it, far from each other; a single one is as wide as it needs.
 */
final class StopRow extends Region {
  private static final double ONE = 0.55;

  /** A second line of small letters makes a key little higher, one of large letters much. */
  private static final double TOO_HIGH = 1.7;

  private final Tiles keys;
  private final double tooHigh;
  private final boolean several;
  private final double apart;

  StopRow(Touch touch, List<Region> made) {
    keys = new Tiles(touch.scale(), 2, Scale.DANGER_GAP_MM, made);
    several = made.size() > 1;
    tooHigh = touch.isLarge() ? 1 : TOO_HIGH;
    apart = touch.scale().px(Scale.DANGER_GAP_MM);
    getChildren().setAll(keys);
  }

  /** How wide a row is that has them all, in pixels. */
  double wideEnough() {
    double widest = keys.minWidth(-1);
    return several ? 2 * widest + apart : widest;
  }

  /** Whether one of them has the ring: what is said then may be about it. */
  boolean isPointed() {
    Node at = getScene() == null ? null : getScene().getFocusOwner();
    while (at != null && !at.equals(this)) {
      at = at.getParent();
    }
    return at != null;
  }

  /** A single key is no louder than the tag: wide only where a line more makes it higher. */
  private double used(double width) {
    if (several) {
      return Math.floor(width);
    }
    double share = Math.min(width, Math.max(ONE * width, keys.minWidth(-1)));
    boolean high = keys.minHeight(share) > tooHigh * keys.minHeight(width);
    return Math.floor(high ? Math.min(width, keys.prefWidth(-1)) : share);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return keys.minWidth(-1);
  }

  @Override
  protected double computeMinHeight(double width) {
    return Math.ceil(keys.minHeight(width <= 0 ? width : used(width)));
  }

  @Override
  protected void layoutChildren() {
    Panes.place(keys, 0, 0, used(getWidth()), getHeight());
  }
}
