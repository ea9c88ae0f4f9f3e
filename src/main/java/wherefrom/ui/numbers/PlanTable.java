package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Polygon;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/** The plan's table: rows of cells under keys that choose a column; in pages where it is long. */
final class PlanTable extends Region {
  private static final double NAME_MM = 42;
  private static final double LINE_MM = 1.2;

  private final Touch touch;
  private final TouchKey back;
  private final TouchKey more;
  private List<TouchKey> heads = List.of();
  private List<FitText> captions = List.of();
  private List<Node> names = List.of();
  private List<List<Region>> cells = List.of();
  private int columns;
  private int chosen;
  private int start;
  private int shown;

  PlanTable(Touch touch) {
    this.touch = touch;
    back = touch.key("Up", () -> turn(Math.max(0, start - Math.max(1, shown))));
    more = touch.key("Down", () -> turn(start + shown));
    Panes.grow(this);
  }

  private void turn(int to) {
    start = to;
    requestLayout();
  }

  /**
   * Shows rows.
   *
   * @param newHeads a key for each column, then other keys that stand in the same row
   * @param newColumns how many columns there are
   * @param newChosen the column that is shown where there is room for one alone
   */
  void show(List<TouchKey> newHeads, int newColumns, List<PlanTableRows.Row> rows, int newChosen) {
    heads = List.copyOf(newHeads);
    columns = newColumns;
    chosen = newChosen;
    captions =
        newHeads.subList(0, newColumns).stream().map(key -> touch.small(key.words())).toList();
    names = rows.stream().<Node>map(row -> touch.small(row.name())).toList();
    cells = rows.stream().map(row -> row.cells().stream().map(this::cell).toList()).toList();
    start = Math.min(start, Math.max(0, rows.size() - 1));
    requestLayout();
  }

  private Region cell(PlanTableRows.Cell cell) {
    FitText value =
        touch.fit(cell.words().replace(" ± ", "\n± "), Scale.SMALL_MM, Scale.SMALL_MM, true);
    if (cell.marked().isEmpty()) {
      return value;
    }
    Polygon figure = figure(cell.marked().get().isBad());
    HBox mark = new HBox(touch.scale().px(2), figure, Panes.grow(touch.small(cell.mark())));
    mark.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
    VBox both = new VBox(value, mark);
    both.setFillWidth(true);
    return both;
  }

  /** A full triangle: under or touching; an empty one: too near to say, or not known. */
  private Polygon figure(boolean under) {
    double side = touch.scale().px(4.5) * touch.scale().textFactor();
    Polygon figure = new Polygon(0, 0, side, 0, side / 2, side);
    figure.getStyleClass().add(under ? "margin-under" : "margin-near");
    return figure;
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return nameWidth() + 2 * gap() + widest() + turning();
  }

  @Override
  protected double computeMinHeight(double width) {
    return touch.scale().px(3 * Scale.KEY_MM) + 2 * gap();
  }

  private double gap() {
    return touch.scale().gap();
  }

  /** How wide the keys that turn the pages are. */
  private double turning() {
    return Math.ceil(Math.max(back.minWidth(-1), more.minWidth(-1)));
  }

  /** What the widest cell needs. */
  private double widest() {
    return cells.stream()
        .flatMap(List::stream)
        .mapToDouble(cell -> cell.minWidth(-1))
        .max()
        .orElse(touch.scale().px(Scale.KEY_MM));
  }

  private double headWidth() {
    return heads.stream().mapToDouble(key -> key.minWidth(-1)).max().orElse(0);
  }

  /** Whether every column has room under its key. */
  private boolean isRoomy(double width) {
    return cellWidth(width, heads.size()) >= Math.max(widest(), headWidth());
  }

  /** All columns; else the first beside the chosen one; else that alone. */
  private List<Integer> shownColumns(double width) {
    if (isRoomy(width)) {
      return IntStream.range(0, columns).boxed().toList();
    }
    boolean two = chosen > 0 && cellWidth(width, 2) >= widest();
    return two ? List.of(0, chosen) : List.of(chosen);
  }

  private double nameWidth() {
    return touch.scale().px(NAME_MM) * (1 + (touch.scale().textFactor() - 1) * 0.8);
  }

  private double rowHeight(int row, List<Integer> shownColumns, double wide) {
    double tallest = names.get(row).minHeight(nameWidth());
    for (int column : shownColumns) {
      tallest = Math.max(tallest, cells.get(row).get(column).minHeight(wide));
    }
    return Math.ceil(tallest);
  }

  private double cellWidth(double width, int count) {
    return Math.floor((width - nameWidth()) / Math.max(1, count) - gap());
  }

  /** Where the rows stand, and how wide the cells of the columns are that are shown. */
  private record Grid(List<Integer> columns, double wide, double top, double height) {}

  private Grid grid(double width) {
    List<Integer> shownColumns = shownColumns(width);
    int across = isRoomy(width) ? heads.size() : shownColumns.size();
    double top = headsHeight(width) + gap() + (isCaptioned(width) ? captionHeight() : 0);
    return new Grid(shownColumns, cellWidth(width, across), top, getHeight() - top);
  }

  /** Whether two columns stand away from their keys. */
  private boolean isCaptioned(double width) {
    return !isRoomy(width) && shownColumns(width).size() > 1;
  }

  private double captionHeight() {
    double high = captions.stream().mapToDouble(words -> words.minHeight(-1)).max().orElse(0);
    return Math.ceil(high + touch.scale().px(LINE_MM));
  }

  private int headsAcross(double width) {
    double one = headWidth() + gap();
    return Math.max(1, Math.min(heads.size(), (int) ((width + gap()) / one)));
  }

  private double headHeight() {
    return Math.ceil(heads.stream().mapToDouble(key -> key.minHeight(headWidth())).max().orElse(0));
  }

  private double headsHeight(double width) {
    int rows = isRoomy(width) ? 1 : (heads.size() + headsAcross(width) - 1) / headsAcross(width);
    return rows * headHeight() + (rows - 1) * gap();
  }

  private int fitting(int from, Grid grid) {
    double used = 0;
    int count = 0;
    while (from + count < names.size()) {
      used += rowHeight(from + count, grid.columns(), grid.wide()) + touch.scale().px(LINE_MM);
      if (count > 0 && used > grid.height()) {
        break;
      }
      count++;
    }
    return count;
  }

  @Override
  protected void layoutChildren() {
    boolean whole = start == 0 && fitting(0, grid(getWidth())) >= names.size();
    double width = whole ? getWidth() : getWidth() - turning() - gap();
    Grid grid = grid(width);
    shown = fitting(start, grid);
    List<Node> placed = new ArrayList<>(heads);
    if (isCaptioned(width)) {
      grid.columns().forEach(column -> placed.add(captions.get(column)));
    }
    for (int row = start; row < start + shown; row++) {
      placed.add(names.get(row));
      for (int column : grid.columns()) {
        placed.add(cells.get(row).get(column));
      }
    }
    if (!whole) {
      placed.addAll(List.of(back, more));
    }
    if (!getChildren().equals(placed)) {
      getChildren().setAll(placed);
      placed.forEach(Node::applyCss);
    }
    placeHeads(width, grid);
    placeCaptions(grid);
    placeRows(grid);
    if (!whole) {
      placeTurning(turning());
    }
  }

  private void placeHeads(double width, Grid grid) {
    boolean roomy = isRoomy(width);
    int across = headsAcross(width);
    double high = headHeight();
    double wide = Math.floor((width - (across - 1) * gap()) / across);
    Tiles.level(heads, roomy ? grid.wide() : wide, high);
    for (int at = 0; at < heads.size(); at++) {
      TouchKey head = heads.get(at);
      if (roomy) {
        Panes.place(head, left(at, grid.wide()), 0, grid.wide(), high);
      } else {
        int row = at / across;
        double x = at % across * (wide + gap());
        Panes.place(head, x, row * (high + gap()), wide, high);
      }
    }
  }

  private void placeCaptions(Grid grid) {
    double high = captionHeight();
    for (int at = 0; at < grid.columns().size(); at++) {
      FitText words = captions.get(grid.columns().get(at));
      Panes.place(words, left(at, grid.wide()), grid.top() - high, grid.wide(), high);
    }
  }

  private void placeRows(Grid grid) {
    double down = grid.top();
    for (int row = start; row < start + shown; row++) {
      double height = rowHeight(row, grid.columns(), grid.wide());
      Panes.place(names.get(row), 0, down, nameWidth(), height);
      for (int at = 0; at < grid.columns().size(); at++) {
        Region cell = cells.get(row).get(grid.columns().get(at));
        Panes.place(cell, left(at, grid.wide()), down, grid.wide(), height);
      }
      down += height + touch.scale().px(LINE_MM);
    }
  }

  private double left(int at, double wide) {
    return nameWidth() + gap() + at * (wide + gap());
  }

  private void placeTurning(double side) {
    back.offer(start > 0);
    more.offer(start + shown < names.size());
    double x = getWidth() - side;
    Panes.place(back, x, 0, side, back.minHeight(side));
    double height = more.minHeight(side);
    Panes.place(more, x, getHeight() - height, side, height);
  }
}
