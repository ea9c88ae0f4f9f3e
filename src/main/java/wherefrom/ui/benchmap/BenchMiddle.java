package wherefrom.ui.benchmap;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.drawn.EngineView;

/**
 * The engine with the places beside it, or below it where the glass is narrow. Where neither leaves
 * the drawing its room, the places take all of it: the rail has the way to the engine.
 */
final class BenchMiddle extends Region {
  private static final double HOLDERS_MM = 55;

  private final EngineView engine;
  private final Tiles holders;
  private final double gap;
  private final double wide;

  /**
   * @param holders the places two by two
   */
  BenchMiddle(Scale scale, EngineView engine, Tiles holders) {
    this.engine = engine;
    this.holders = holders;
    this.gap = scale.gap();
    this.wide = scale.px(HOLDERS_MM);
    getChildren().setAll(engine, holders);
    Panes.grow(this);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  private double beside() {
    return Math.max(wide, 2 * Math.ceil(holders.minWidth(-1)) + Math.ceil(gap) + 2);
  }

  @Override
  protected double computeMinHeight(double width) {
    return holders.minHeight(Math.min(width, beside()));
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double height = getHeight();
    double left = width - gap - beside();
    double low = holders.minHeight(width);
    engine.setVisible(true);
    if (!engine.hasRoom(left, height) && engine.hasRoom(width, height - gap - low)) {
      engine.resizeRelocate(0, 0, width, height - gap - low);
      holders.resizeRelocate(0, height - low, width, low);
      return;
    }
    boolean drawn = engine.hasRoom(left, height);
    engine.setVisible(drawn);
    if (!drawn) {
      holders.resizeRelocate(0, 0, width, height);
      return;
    }
    engine.resizeRelocate(0, 0, Math.max(0, left), height);
    holders.resizeRelocate(left + gap, 0, beside(), height);
  }
}
