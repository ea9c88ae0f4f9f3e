package wherefrom.ui.drawn;

import javafx.scene.layout.Region;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.Holder;
import wherefrom.drawing.HolderShapes;
import wherefrom.engine.Layout;
import wherefrom.parts.PartKind;
import wherefrom.ui.controls.Scale;

/** Bench, basket, vice or nowhere, with parts of a kind in it. It takes no touch. */
public final class HolderPicture extends Region {

  /**
   * @param width in pixels; the height follows
   */
  public HolderPicture(Scale scale, Layout layout, PartKind kind, Holder holder, double width) {
    double unit = width / HolderShapes.WIDE;
    getChildren().addAll(ShapeNodes.of(HolderShapes.behind(holder, unit)));
    for (Bounds box : HolderShapes.parts(holder, unit)) {
      DrawnAs look = holder == Holder.NOWHERE ? DrawnAs.OUT : DrawnAs.IN;
      LookNode part = new LookNode(KindShape.shapes(scale, layout, kind, box.width()), look);
      part.setTranslateX(box.x());
      part.setTranslateY(box.y());
      getChildren().add(part);
    }
    getChildren().addAll(ShapeNodes.of(HolderShapes.before(holder, unit)));
    double high = HolderShapes.HIGH * unit;
    setMinSize(width, high);
    setPrefSize(width, high);
    setMaxSize(width, high);
    setMouseTransparent(true);
  }

  @Override
  protected void layoutChildren() {
    // The shapes lie where they were drawn.
  }
}
