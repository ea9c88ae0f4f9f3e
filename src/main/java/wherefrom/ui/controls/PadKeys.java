package wherefrom.ui.controls;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.Region;

/** The twelve keys of a pad: four rows of three, or three rows of four where the glass is low. */
public final class PadKeys extends Region {
  private static final int UPRIGHT = 3;
  private static final int LOW = 4;

  private final List<Node> upright;
  private final List<Node> low;
  private final Tiles tiles;
  private final double gap;

  /**
   * @param keys 1 to 9, the decimal mark, 0, Erase
   */
  public PadKeys(Touch touch, List<? extends Node> keys) {
    upright = List.copyOf(keys);
    low = List.of(0, 1, 2, 11, 3, 4, 5, 9, 6, 7, 8, 10).stream().map(upright::get).toList();
    gap = touch.scale().gap();
    tiles = new Tiles(touch.scale(), UPRIGHT, Scale.GAP_MM, upright);
    getChildren().setAll(tiles);
    Panes.grow(this);
  }

  private double high(int rows) {
    double row = upright.stream().mapToDouble(key -> key.minHeight(-1)).max().orElse(0);
    return rows * (Math.ceil(row) + gap) - gap;
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  private double wide(int columns) {
    double key = upright.stream().mapToDouble(one -> one.minWidth(-1)).max().orElse(0);
    return columns * (Math.ceil(key) + gap) - gap;
  }

  @Override
  protected double computeMinWidth(double height) {
    return wide(UPRIGHT);
  }

  @Override
  protected double computeMinHeight(double width) {
    boolean narrow = width > 0 && width < wide(LOW);
    return Math.ceil(high(upright.size() / (narrow ? UPRIGHT : LOW)));
  }

  @Override
  protected double computePrefHeight(double width) {
    return high(upright.size() / UPRIGHT);
  }

  @Override
  protected void layoutChildren() {
    boolean roomy = getHeight() >= high(upright.size() / UPRIGHT) || getWidth() < wide(LOW);
    tiles.setCells(roomy ? upright : low, roomy ? UPRIGHT : LOW);
    Panes.place(tiles, 0, 0, getWidth(), getHeight());
  }
}
