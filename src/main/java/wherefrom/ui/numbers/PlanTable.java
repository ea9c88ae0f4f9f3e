package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Polygon;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
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
  private List<Node> names = List.of();
  private List<List<Region>> cells = List.of();
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
   * @param newHeads a key for each column that is shown
   * @param columns which cells of each row are shown
   */
  void show(List<TouchKey> newHeads, List<PlanModel.Row> rows, List<Integer> columns) {
    heads = List.copyOf(newHeads);
    names = rows.stream().<Node>map(row -> touch.small(row.name())).toList();
    List<List<Region>> made = new ArrayList<>();
    for (PlanModel.Row row : rows) {
      made.add(columns.stream().map(column -> cell(row.cells().get(column))).toList());
    }
    cells = List.copyOf(made);
    start = Math.min(start, Math.max(0, rows.size() - 1));
    requestLayout();
  }

  private Region cell(PlanModel.Cell cell) {
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
  protected double computeMinHeight(double width) {
    return touch.scale().px(3 * Scale.KEY_MM) + 2 * touch.scale().gap();
  }

  private double nameWidth() {
    return touch.scale().px(NAME_MM) * (1 + (touch.scale().textFactor() - 1) * 0.8);
  }

  private double rowHeight(int row, double width) {
    double tallest = names.get(row).minHeight(nameWidth());
    for (Region cell : cells.get(row)) {
      tallest = Math.max(tallest, cell.minHeight(width));
    }
    return Math.ceil(tallest);
  }

  private double cellWidth(double width) {
    int count = Math.max(1, heads.size());
    return Math.floor((width - nameWidth()) / count - touch.scale().gap());
  }

  private int fitting(int from, double width, double height) {
    double used = 0;
    int count = 0;
    while (from + count < names.size()) {
      used += rowHeight(from + count, cellWidth(width)) + touch.scale().px(LINE_MM);
      if (count > 0 && used > height) {
        break;
      }
      count++;
    }
    return count;
  }

  @Override
  protected void layoutChildren() {
    double gap = touch.scale().gap();
    double head =
        heads.stream().mapToDouble(key -> key.minHeight(cellWidth(getWidth()))).max().orElse(0);
    double room = getHeight() - head - gap;
    boolean whole = start == 0 && fitting(0, getWidth(), room) >= names.size();
    double side = Math.ceil(Math.max(back.minWidth(-1), more.minWidth(-1)));
    double width = whole ? getWidth() : getWidth() - side - gap;
    List<Node> placed = new ArrayList<>(heads);
    shown = fitting(start, width, room);
    for (int row = start; row < start + shown; row++) {
      placed.add(names.get(row));
      placed.addAll(cells.get(row));
    }
    if (!whole) {
      placed.addAll(List.of(back, more));
    }
    if (!getChildren().equals(placed)) {
      getChildren().setAll(placed);
      placed.forEach(Node::applyCss);
    }
    place(width, head, gap);
    if (!whole) {
      placeTurning(side);
    }
  }

  private void place(double width, double head, double gap) {
    double wide = cellWidth(width);
    for (int column = 0; column < heads.size(); column++) {
      heads.get(column).resizeRelocate(left(column, wide, gap), 0, wide, head);
    }
    double down = head + gap;
    for (int row = start; row < start + shown; row++) {
      double height = rowHeight(row, wide);
      names.get(row).resizeRelocate(0, down, nameWidth(), height);
      for (int column = 0; column < cells.get(row).size(); column++) {
        cells.get(row).get(column).resizeRelocate(left(column, wide, gap), down, wide, height);
      }
      down += height + touch.scale().px(LINE_MM);
    }
  }

  private double left(int column, double wide, double gap) {
    return nameWidth() + gap + column * (wide + gap);
  }

  private void placeTurning(double side) {
    back.offer(start > 0);
    more.offer(start + shown < names.size());
    double x = getWidth() - side;
    back.resizeRelocate(x, 0, side, back.minHeight(side));
    double height = more.minHeight(side);
    more.resizeRelocate(x, getHeight() - height, side, height);
  }
}
