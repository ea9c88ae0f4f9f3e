package wherefrom.ui.sketches;

import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.parts.PartKind;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.subject.SubjectPictures;

/** Small pictures of kinds of part and of what carries no tag, all of one size. */
public final class GroupPictures {
  private GroupPictures() {}

  /**
   * The picture of a kind or a feature.
   *
   * @param key the kind's or the feature's
   * @return empty for what has none
   */
  public static Optional<Region> of(ScreenContext context, String key) {
    return Stream.of(PartKind.values())
        .filter(kind -> kind.key().equals(key))
        .findFirst()
        .map(kind -> held(context, SubjectPictures.of(context, kind)))
        .or(() -> Sketches.find(key).map(sketch -> new SketchPicture(context, sketch)));
  }

  /** As wide as a sketch, so that the words beside them begin in one line. */
  private static Region held(ScreenContext context, Region shape) {
    StackPane held = new StackPane(shape);
    double wide = context.scale().px(SketchPicture.WIDE_MM);
    held.setMinWidth(wide);
    held.setPrefWidth(wide);
    held.setMaxWidth(wide);
    held.setMouseTransparent(true);
    return held;
  }
}
