package wherefrom.ui.controls;

import javafx.scene.shape.ClosePath;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.StrokeLineJoin;

/**
 * The outline of a tag: its corners cut on the side of the wire. In the dark look the frame lies
 * within a rim of paper, else it would vanish; the style sheet shows the one that fits.
 */
final class TagShape {
  /** Corners are cut by a part of the height, up to so many millimetres. */
  private static final double CUT = 0.26;

  private static final double MOST_CUT_MM = 6.4;
  private static final double RIM = 0.75;

  private final Path lightFrame = path("tag-frame");
  private final Path rim = path("tag-rim");
  private final Path darkFrame = path("tag-inner-frame");
  private final double frame;
  private final double mostCut;

  /**
   * @param frame the frame's width
   */
  TagShape(Scale scale, double frame) {
    this.frame = frame;
    this.mostCut = scale.px(MOST_CUT_MM);
    lightFrame.setStrokeWidth(frame);
    darkFrame.setStrokeWidth(0.8 * frame);
    rim.setStrokeWidth(0);
  }

  private static Path path(String styleClass) {
    Path path = new Path();
    path.getStyleClass().add(styleClass);
    path.setStrokeLineJoin(StrokeLineJoin.MITER);
    path.setManaged(false);
    path.setMouseTransparent(true);
    return path;
  }

  /** What is drawn, lowest first. */
  Path[] nodes() {
    return new Path[] {lightFrame, rim, darkFrame};
  }

  double cut(double height) {
    return Math.min(CUT * height, mostCut);
  }

  void resize(double width, double height) {
    double cut = cut(height);
    double half = frame / 2;
    outline(lightFrame, half, width, height, cut);
    outline(rim, 0, width, height, cut + RIM * frame * 0.3);
    outline(darkFrame, RIM * frame + half, width, height, cut);
  }

  private static void outline(Path path, double inset, double width, double height, double cut) {
    double right = width - inset;
    double bottom = height - inset;
    path.getElements()
        .setAll(
            new MoveTo(inset + cut, inset),
            new LineTo(right, inset),
            new LineTo(right, bottom),
            new LineTo(inset + cut, bottom),
            new LineTo(inset, bottom - cut),
            new LineTo(inset, inset + cut),
            new ClosePath());
  }
}
