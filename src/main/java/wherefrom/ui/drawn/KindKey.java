package wherefrom.ui.drawn;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.drawing.DrawnAs;
import wherefrom.engine.Layout;
import wherefrom.parts.PartKind;
import wherefrom.text.Words;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/** A key that shows a kind of part as its shape; the title above says which is chosen. */
public final class KindKey extends Region {
  private static final PseudoClass SELECTED = PseudoClass.getPseudoClass("selected");

  /** The shape in the key's side. */
  private static final double SHAPE = 0.64;

  private static final int MOST_IN_ROW = 8;

  private final PartKind kind;
  private final KindShape shape;
  private final double side;
  private final String words;

  private KindKey(Scale scale, Layout layout, PartKind kind) {
    this.kind = kind;
    double least = scale.px(Scale.KEY_MM);
    side = SHAPE * least;
    shape = new KindShape(scale, layout, kind, side, DrawnAs.IN);
    getStyleClass().addAll("key", "plain", "kind-key");
    getChildren().add(shape);
    setAccessibleRole(AccessibleRole.BUTTON);
    words = Words.capital(kind.plural());
    setAccessibleText(words);
    setMinSize(least, least);
    setPrefSize(least, least);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  /** One key. */
  public static KindKey of(Touch touch, Layout layout, PartKind kind, Runnable act) {
    return touch.target(new KindKey(touch.scale(), layout, kind), act);
  }

  /**
   * A key for each kind, eight in a row at most.
   *
   * @param chosen the kind that is shown now
   */
  public static Tiles row(
      Touch touch,
      Layout layout,
      List<PartKind> kinds,
      Optional<PartKind> chosen,
      Consumer<PartKind> act) {
    List<KindKey> keys =
        kinds.stream()
            .map(
                kind ->
                    of(touch, layout, kind, () -> act.accept(kind))
                        .select(chosen.filter(kind::equals).isPresent()))
            .toList();
    return new Tiles(touch.scale(), MOST_IN_ROW, Scale.GAP_MM, keys);
  }

  /** Shows another kind of a row as the one that is shown now. */
  public static void choose(Tiles row, PartKind chosen) {
    for (Node key : row.getChildrenUnmodifiable()) {
      if (key instanceof KindKey one) {
        one.select(one.kind == chosen);
      }
    }
  }

  /** Shows it as chosen. */
  public KindKey select(boolean on) {
    pseudoClassStateChanged(SELECTED, on);
    setAccessibleText(on ? words + ", chosen" : words);
    return this;
  }

  @Override
  protected void layoutChildren() {
    Panes.place(shape, (getWidth() - side) / 2, (getHeight() - side) / 2, side, side);
  }
}
