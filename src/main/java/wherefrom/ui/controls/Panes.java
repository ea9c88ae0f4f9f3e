package wherefrom.ui.controls;

import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Columns and rows with the gap that keys need between them. */
public final class Panes {
  private Panes() {}

  public static VBox column(Scale scale, Node... children) {
    VBox column = new VBox(scale.gap(), children);
    column.setFillWidth(true);
    return column;
  }

  public static HBox row(Scale scale, Node... children) {
    HBox row = new HBox(scale.gap(), children);
    row.setFillHeight(true);
    return row;
  }

  /** Takes what room is left, both ways. */
  public static <N extends Region> N grow(N node) {
    node.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    VBox.setVgrow(node, Priority.ALWAYS);
    HBox.setHgrow(node, Priority.ALWAYS);
    return node;
  }

  /** Takes exactly this width, in mm. */
  public static <N extends Region> N wide(N node, double mm, Scale scale) {
    node.setMinWidth(scale.px(mm));
    node.setPrefWidth(scale.px(mm));
    node.setMaxWidth(scale.px(mm));
    return node;
  }

  /**
   * Gives a child its place, in pixels, each edge on the nearest whole one: what is drawn then ends
   * where its bounds end, and nothing of an edge stays on the glass when it goes. A negative width
   * or height is none.
   */
  public static void place(Node child, double x, double y, double width, double height) {
    if (child.getParent() instanceof Region parent) {
      double left = parent.snapPositionX(x);
      double top = parent.snapPositionY(y);
      double right = parent.snapPositionX(x + width);
      double bottom = parent.snapPositionY(y + height);
      child.resizeRelocate(left, top, Math.max(0, right - left), Math.max(0, bottom - top));
    } else {
      child.resizeRelocate(x, y, width, height);
    }
  }

  /** Whether the glass that a node stands on is higher than wide; not as long as it is on none. */
  public static boolean isUpright(Node node) {
    Scene scene = node.getScene();
    return scene != null && scene.getHeight() > scene.getWidth();
  }

  /** An empty piece that takes what room is left. */
  public static Region space() {
    return grow(new Region());
  }

  public static <N extends Region> N pad(N node, double mm, Scale scale) {
    node.setPadding(new Insets(scale.px(mm)));
    return node;
  }
}
