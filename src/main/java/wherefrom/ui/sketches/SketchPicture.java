package wherefrom.ui.sketches;

import java.util.Locale;
import javafx.scene.layout.Region;
import javafx.scene.shape.SVGPath;
import javafx.scene.transform.Scale;
import wherefrom.ui.app.ScreenContext;

/** A sketch as a small picture, without its rings and words. It takes no touch. */
final class SketchPicture extends Region {
  static final double WIDE_MM = 20;

  SketchPicture(ScreenContext context, Sketch sketch) {
    double wide = context.scale().px(WIDE_MM);
    double factor = wide / SketchView.WIDE;
    for (Sketch.Stroke stroke : sketch.strokes()) {
      SVGPath path = new SVGPath();
      path.setContent(stroke.path());
      path.getStyleClass().add("sketch-" + stroke.ink().name().toLowerCase(Locale.ROOT));
      path.getTransforms().setAll(new Scale(factor, factor));
      path.setManaged(false);
      getChildren().add(path);
    }
    double high = SketchView.HIGH * factor;
    setMinSize(wide, high);
    setPrefSize(wide, high);
    setMaxSize(wide, high);
    setMouseTransparent(true);
  }
}
