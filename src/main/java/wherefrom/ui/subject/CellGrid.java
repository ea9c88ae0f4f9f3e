package wherefrom.ui.subject;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.PictureKey;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/**
 * Any number of keys in pages of whole rows: as many beside each other as leave every key its
 * words, and the same in every row.
 */
public final class CellGrid extends Region {
  private final Touch touch;
  private final int columns;
  private final Pager<List<PictureKey>> rows;
  private List<PictureKey> keys = List.of();
  private double widest;
  private int across;

  /**
   * @param columns with usual text; larger text has fewer
   */
  public CellGrid(Touch touch, int columns) {
    this.touch = touch;
    this.columns = Math.max(1, (int) Math.ceil(columns / touch.scale().textFactor() - 0.3));
    rows = Pager.list(touch, this::row);
    across = this.columns;
    getChildren().setAll(rows);
    Panes.grow(this);
  }

  /** Shows these keys where the list stood. */
  public void show(List<Cell> shown) {
    keys = shown.stream().map(this::key).toList();
    widest = Math.ceil(keys.stream().mapToDouble(key -> key.minWidth(-1)).max().orElse(0));
    refill();
  }

  private void refill() {
    List<List<PictureKey>> lines = new ArrayList<>();
    for (int at = 0; at < keys.size(); at += across) {
      lines.add(keys.subList(at, Math.min(keys.size(), at + across)));
    }
    rows.refill(lines);
    requestLayout();
  }

  private Tiles row(List<PictureKey> line) {
    List<Node> cells = new ArrayList<>(line);
    while (cells.size() < across) {
      cells.add(new Region());
    }
    return Tiles.row(touch.scale(), cells.toArray(Node[]::new));
  }

  private PictureKey key(Cell cell) {
    return PictureKey.of(touch, cell.picture(), cell.words(), cell.more(), cell.done(), cell.act())
        .select(cell.chosen());
  }

  /** How many keys stand beside each other in a row of this width. */
  private int fitting(double width) {
    double room = width - rows.turningWidth();
    int fitting = (int) ((room + touch.scale().gap()) / (widest + touch.scale().gap()));
    return Math.max(1, Math.min(columns, fitting));
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return widest + rows.turningWidth();
  }

  @Override
  protected double computeMinHeight(double width) {
    spread(width);
    return rows.minHeight(width);
  }

  @Override
  protected double computePrefHeight(double width) {
    spread(width);
    return rows.prefHeight(width);
  }

  private void spread(double width) {
    int fitting = width <= 0 ? across : fitting(width);
    if (fitting != across) {
      across = fitting;
      refill();
    }
  }

  @Override
  protected void layoutChildren() {
    spread(getWidth());
    Panes.place(rows, 0, 0, getWidth(), getHeight());
  }
}
