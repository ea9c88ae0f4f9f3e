package wherefrom.ui.bags;

import javafx.geometry.Pos;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/** A bag with its seam, and how many pieces are in it. It takes no touch. */
final class BagPicture extends Region {
  private static final double WIDE_MM = 14;
  private static final double HIGH_MM = 13.6;
  private static final double SEAM = 0.17;

  private final Region sack = new Region();
  private final Region seam = new Region();
  private final FitText count;

  BagPicture(Touch touch, int pieces) {
    Scale scale = touch.scale();
    double factor = scale.textFactor();
    count = touch.fit(Integer.toString(pieces), Scale.SMALL_MM, Scale.SMALL_MM, true).centred();
    sack.getStyleClass().add("bag");
    seam.getStyleClass().add("bag-seam");
    StackPane.setAlignment(count, Pos.CENTER);
    getChildren().addAll(sack, seam, count);
    double wide = Math.max(scale.px(WIDE_MM), 1.3 * count.leastLineWidth());
    double high = scale.px(HIGH_MM) * factor;
    setMinSize(wide, high);
    setPrefSize(wide, high);
    setMaxSize(wide, high);
    setMouseTransparent(true);
  }

  @Override
  protected void layoutChildren() {
    double top = SEAM * getHeight();
    Panes.place(sack, 0, 0, getWidth(), getHeight());
    Panes.place(seam, 0, top, getWidth(), Math.max(2, getHeight() / 24));
    Panes.place(count, 0, top, getWidth(), getHeight() - top);
  }
}
