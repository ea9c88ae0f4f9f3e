package wherefrom.ui.engine;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.drawn.EngineView;

/**
 * The engine with other things beside it, or below it where the glass is narrow. Where neither
 * leaves the drawing its room, the others take all of it: the rail has the way to the engine.
 */
public final class EngineBeside extends Region {
  private final EngineView engine;
  private final Region other;
  private final double gap;
  private final double wide;

  /**
   * @param wideMm how wide the others are at least beside the engine, in mm
   */
  public EngineBeside(Scale scale, EngineView engine, Region other, double wideMm) {
    this.engine = engine;
    this.other = other;
    this.gap = scale.gap();
    this.wide = scale.px(wideMm);
    getChildren().setAll(engine, other);
    Panes.grow(this);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinHeight(double width) {
    return other.minHeight(width);
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double height = getHeight();
    double left = width - gap - wide;
    double low = other.minHeight(width);
    boolean beside = engine.hasRoom(left, height) && other.minHeight(wide) <= height;
    boolean over = !beside && engine.hasRoom(width, height - gap - low);
    engine.setVisible(beside || over);
    if (beside) {
      Panes.place(engine, 0, 0, left, height);
      Panes.place(other, left + gap, 0, wide, height);
    } else if (over) {
      double drawn = Math.min(height - gap - low, engine.heightFor(width));
      Panes.place(engine, 0, 0, width, drawn);
      Panes.place(other, 0, drawn + gap, width, height - drawn - gap);
    } else {
      Panes.place(other, 0, 0, width, height);
    }
  }
}
