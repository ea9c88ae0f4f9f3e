package wherefrom.ui.controls;

import java.util.Locale;
import javafx.scene.layout.Region;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;

/**
 * The outline of a tag: its corners cut on the side of the wire. Its three backgrounds are rim,
 * frame and paper; in the light look the rim is part of the frame, in the dark it is paper, as a
 * black frame would vanish there.
 */
final class TagShape {
  /** Corners are cut by a part of the height, up to so many millimetres. */
  private static final double CUT = 0.26;

  private static final double MOST_CUT_MM = 6.4;

  /** The rim's part of the frame. */
  private static final double RIM = 0.42;

  private final Region tag;
  private final double mostCut;
  private double width;
  private double height;

  /**
   * @param tag what gets this shape
   * @param frame the frame's width, its rim included
   */
  TagShape(Region tag, Scale scale, double frame) {
    this.tag = tag;
    this.mostCut = scale.px(MOST_CUT_MM);
    tag.setStyle(
        String.format(Locale.ROOT, "-fx-background-insets: 0, %.2f, %.2f", RIM * frame, frame));
  }

  double cut(double tall) {
    return Math.min(CUT * tall, mostCut);
  }

  /** Takes the size that the tag has now. */
  void fit() {
    if (tag.getWidth() == width && tag.getHeight() == height) {
      return;
    }
    width = tag.getWidth();
    height = tag.getHeight();
    double cut = cut(height);
    tag.setShape(
        new Path(
            new MoveTo(cut, 0),
            new LineTo(width, 0),
            new LineTo(width, height),
            new LineTo(cut, height),
            new LineTo(0, height - cut),
            new LineTo(0, cut),
            new ClosePath()));
  }
}
