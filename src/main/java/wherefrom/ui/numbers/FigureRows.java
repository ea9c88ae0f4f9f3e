package wherefrom.ui.numbers;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.quantity.Unit;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/**
 * What follows from each column of the plan: a row for each figure, under each column its cell.
 * Where there are more than the room holds they are turned, whole rows at a time.
 */
final class FigureRows {
  /** What stands left of the columns is as wide as this, in mm. */
  static final double NAME_MM = 44;

  private static final double LINE_MM = 0.8;
  private static final double PAD_MM = 2.5;
  private static final double UNIT_MM = 10;
  private static final String FIGURE = "\\S+( \\S{1,3})?";

  private record Row(FitText name, FitText unit, List<Region> cells) {}

  private final Touch touch;
  private final Deque<Integer> before = new ArrayDeque<>();
  private final List<Row> rows = new ArrayList<>();
  private int start;
  private int shown;

  FigureRows(Touch touch) {
    this.touch = touch;
  }

  /**
   * Shows rows, from the one that stood first as far as they still reach so far.
   *
   * @param chosen the column on paper, counted from the left
   */
  void show(List<PlanTableRows.Row> newRows, int chosen) {
    rows.clear();
    newRows.forEach(row -> rows.add(row(row, chosen)));
    if (start >= rows.size()) {
      first();
    }
  }

  private void first() {
    before.clear();
    start = 0;
  }

  void turnBack() {
    start = before.isEmpty() ? 0 : before.pop();
  }

  void turnOn() {
    before.push(start);
    start += shown;
  }

  boolean isFirst() {
    return start == 0;
  }

  boolean isLast() {
    return start + shown >= rows.size();
  }

  private Row row(PlanTableRows.Row row, int chosen) {
    FitText unit = touch.small(row.unit().map(Unit::symbol).orElse("")).align(Pos.CENTER_RIGHT);
    unit.getStyleClass().add("second");
    return new Row(touch.small(row.title()), unit, cells(row, chosen));
  }

  private List<Region> cells(PlanTableRows.Row row, int chosen) {
    List<Region> cells = new ArrayList<>();
    for (int at = 0; at < row.cells().size(); at++) {
      cells.add(cell(row.cells().get(at), at == chosen));
    }
    return cells;
  }

  /** The chosen column's words lie on paper. */
  private Region cell(PlanTableRows.Cell cell, boolean onPaper) {
    String words = cell.words().replaceFirst(" ± [0-9.]+", "");
    FitText figure = touch.fit(words, Scale.SMALL_MM, Scale.SMALL_MM, onPaper);
    figure.align(Pos.CENTER_RIGHT).setAccessibleText(cell.words() + " " + cell.mark());
    Region shownAs =
        cell.marked().isPresent()
            ? new MarkedFigure(touch.scale(), figure, cell.marked().get().isBad())
            : figure;
    if (onPaper) {
      shownAs.getStyleClass().add("on-paper");
    }
    return shownAs;
  }

  private double px(double mm) {
    return touch.scale().px(mm);
  }

  /** Figures stand in one line; words may have several. */
  private static double wide(Region cell) {
    boolean figure = cell instanceof FitText words && words.words().matches(FIGURE);
    return figure ? ((FitText) cell).leastLineWidth() : cell.minWidth(-1);
  }

  /** What the widest cell needs, in pixels. */
  double widest() {
    return rows.stream()
        .flatMap(row -> row.cells().stream())
        .mapToDouble(FigureRows::wide)
        .max()
        .orElse(0);
  }

  private double high(Row row, double column) {
    double high = row.name().minHeight(nameWide(row));
    for (Region cell : row.cells()) {
      high = Math.max(high, cell.minHeight(column - 2 * px(PAD_MM)));
    }
    return Math.ceil(high + px(LINE_MM));
  }

  private double nameWide(Row row) {
    return px(NAME_MM) - (row.unit().words().isEmpty() ? px(3) : px(UNIT_MM));
  }

  /** How many rows from here find room. */
  private int fitting(int from, double column, double room) {
    double used = 0;
    int count = 0;
    while (from + count < rows.size()) {
      used += high(rows.get(from + count), column);
      if (count > 0 && used > room) {
        break;
      }
      count++;
    }
    return count;
  }

  /** Whether no row needs turning under columns of this width, in a room of this height. */
  boolean areWhole(double column, double room) {
    return fitting(0, column, room) >= rows.size();
  }

  /**
   * Settles which rows are seen. Where all have room they are seen from the first, as then there is
   * no key to turn them.
   *
   * @return the nodes of what is seen
   */
  List<Node> settle(boolean whole, double column, double room) {
    if (whole) {
      first();
    }
    shown = fitting(start, column, room);
    List<Node> seen = new ArrayList<>();
    for (Row row : rows.subList(start, start + shown)) {
      seen.add(row.name());
      seen.add(row.unit());
      seen.addAll(row.cells());
    }
    return seen;
  }

  /** Puts the rows that are seen one below the other. */
  void place(double top, double column) {
    double y = top;
    for (Row row : rows.subList(start, start + shown)) {
      double high = high(row, column);
      Panes.place(row.name(), 0, y, nameWide(row), high);
      Panes.place(row.unit(), px(NAME_MM - UNIT_MM), y, px(UNIT_MM - 3), high);
      for (int at = 0; at < row.cells().size(); at++) {
        double x = px(NAME_MM) + at * column + px(PAD_MM);
        Panes.place(row.cells().get(at), x, y, column - 2 * px(PAD_MM), high);
      }
      y += high;
    }
  }
}
