package wherefrom.ui.controls;

import javafx.scene.layout.Region;

/** The toothed frame of a flagged spot, for the legend. */
public final class FlagMark extends Region {
  private static final double SIDE_MM = 9.2;

  public FlagMark(Scale scale) {
    double side = scale.px(SIDE_MM) * scale.textFactor();
    getStyleClass().add("flag-mark");
    setMinSize(side, side);
    setPrefSize(side, side);
    setMaxSize(side, side);
    setMouseTransparent(true);
  }
}
