package wherefrom.ui.controls;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;

/**
 * Equal cells, row by row, that fill the room: as many columns as asked for, fewer where the words
 * in the cells need more width. What is meant as one row stays one where it can, with cells as wide
 * as their words need: a second row would take the room of what stands above.
 */
public final class Tiles extends Region implements Levelled {
  private final double gap;
  private int mostColumns;
  private boolean endToEnd;
  private double cap = Double.MAX_VALUE;

  /**
   * @param gapMm between cells, in mm
   */
  public Tiles(Scale scale, int mostColumns, double gapMm, List<? extends Node> cells) {
    this.gap = Math.ceil(scale.px(gapMm));
    this.mostColumns = mostColumns;
    getChildren().setAll(cells);
  }

  public static Tiles of(Scale scale, int mostColumns, Node... cells) {
    return new Tiles(scale, mostColumns, Scale.GAP_MM, List.of(cells));
  }

  /** A row of equal cells. */
  public static Tiles row(Scale scale, Node... cells) {
    return of(scale, cells.length, cells);
  }

  /** The last cell takes what its row has left. */
  Tiles endToEnd() {
    endToEnd = true;
    return this;
  }

  public void setCells(List<? extends Node> cells) {
    getChildren().setAll(cells);
  }

  /** Other cells, in other columns at most. */
  public void setCells(List<? extends Node> cells, int columns) {
    mostColumns = columns;
    if (!getChildren().equals(cells)) {
      getChildren().setAll(cells);
    }
  }

  @Override
  public javafx.geometry.Orientation getContentBias() {
    return javafx.geometry.Orientation.HORIZONTAL;
  }

  private List<Node> cells() {
    return getManagedChildren();
  }

  private double widest() {
    return cells().stream().mapToDouble(cell -> cell.minWidth(-1)).max().orElse(0);
  }

  private int columns(double width) {
    int columns = Math.max(1, Math.min(mostColumns, cells().size()));
    while (columns > 1 && width > 0 && cellWidth(width, columns) < widest()) {
      columns--;
    }
    int rows = Math.max(1, rows(columns));
    return endToEnd ? columns : Math.max(1, (cells().size() + rows - 1) / rows);
  }

  private double cellWidth(double width, int columns) {
    return Math.floor((width - (columns - 1) * gap) / columns);
  }

  /** Whether the cells fit one row, though not as equals. */
  private boolean isUneven(double width) {
    int many = cells().size();
    return many > 1
        && many <= mostColumns
        && width > 0
        && cellWidth(width, many) < widest()
        && spare(width) >= 0;
  }

  /** What a row of all the cells has left of a width. */
  private double spare(double width) {
    double used = cells().stream().mapToDouble(cell -> Math.ceil(cell.minWidth(-1))).sum();
    return width - used - (cells().size() - 1) * gap;
  }

  /** How wide a cell is in an uneven row: as its words need, and a share of what is left. */
  private double unevenWidth(Node cell, double width) {
    return Math.ceil(cell.minWidth(-1)) + Math.floor(spare(width) / cells().size());
  }

  private int rows(int columns) {
    return (cells().size() + columns - 1) / columns;
  }

  @Override
  protected double computeMinWidth(double height) {
    return widest();
  }

  @Override
  protected double computePrefWidth(double height) {
    int columns = Math.max(1, Math.min(mostColumns, cells().size()));
    double widest = cells().stream().mapToDouble(cell -> cell.prefWidth(-1)).max().orElse(0);
    return columns * widest + (columns - 1) * gap;
  }

  @Override
  protected double computeMinHeight(double width) {
    if (isUneven(width)) {
      return cells().stream()
          .mapToDouble(cell -> Math.ceil(cell.minHeight(unevenWidth(cell, width))))
          .max()
          .orElse(0);
    }
    int columns = columns(width);
    double cell = width <= 0 ? -1 : cellWidth(width, columns);
    double tallest = cells().stream().mapToDouble(node -> node.minHeight(cell)).max().orElse(0);
    int rows = rows(columns);
    return rows * Math.ceil(tallest) + Math.max(0, rows - 1) * gap;
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected double computeMaxHeight(double width) {
    return Double.MAX_VALUE;
  }

  private List<TouchKey> keys() {
    return cells().stream().filter(TouchKey.class::isInstance).map(TouchKey.class::cast).toList();
  }

  /** The words of all keys of a size have one size: that of the key that has least room. */
  public static void level(List<TouchKey> keys, double width, double height) {
    double size = keys.stream().mapToDouble(key -> key.fitted(width, height)).min().orElse(0);
    keys.forEach(key -> key.cap(size));
  }

  /** A letter on a key of a pad does not shrink because a word beside it has less room. */
  private void levelKeys() {
    for (boolean letters : new boolean[] {false, true}) {
      double size = Math.min(cap, fitted(letters));
      keys().stream().filter(key -> key.isLetter() == letters).forEach(key -> key.cap(size));
    }
  }

  /** What the words of its keys have room for, as they are laid out. */
  @Override
  public double fitted() {
    return Math.min(fitted(false), fitted(true));
  }

  private double fitted(boolean letters) {
    double width = getWidth();
    int columns = columns(width);
    double even = cellWidth(width, columns);
    boolean uneven = isUneven(width);
    double height = uneven ? getHeight() : cellHeight(Math.max(1, rows(columns)));
    return keys().stream()
        .filter(key -> key.isLetter() == letters)
        .mapToDouble(key -> key.fitted(uneven ? unevenWidth(key, width) : even, height))
        .min()
        .orElse(Double.MAX_VALUE);
  }

  @Override
  public void cap(double sizePx) {
    if (sizePx != cap) {
      cap = sizePx;
      requestLayout();
    }
  }

  private double cellHeight(int rows) {
    return Math.floor((getHeight() - (rows - 1) * gap) / rows);
  }

  private void layOutUneven(double width) {
    levelKeys();
    double x = 0;
    for (Node cell : cells()) {
      double wide = unevenWidth(cell, width);
      Panes.place(cell, x, 0, wide, getHeight());
      x += wide + gap;
    }
    levelRows();
  }

  /** Rows of a list that stand beside each other have headings of one size. */
  private void levelRows() {
    Levelled.level(cells().stream().filter(ListRow.class::isInstance).toList());
  }

  @Override
  protected void layoutChildren() {
    if (isUneven(getWidth())) {
      layOutUneven(getWidth());
      return;
    }
    int columns = columns(getWidth());
    double width = cellWidth(getWidth(), columns);
    int rows = Math.max(1, rows(columns));
    double height = cellHeight(rows);
    levelKeys();
    int at = 0;
    for (Node cell : cells()) {
      int column = at % columns;
      int row = at / columns;
      boolean last = endToEnd && at == cells().size() - 1;
      double wide = last ? getWidth() - column * (width + gap) : width;
      Panes.place(cell, column * (width + gap), row * (height + gap), Math.floor(wide), height);
      at++;
    }
    levelRows();
  }
}
