package wherefrom.ui.numbers;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.IntConsumer;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.shape.Polygon;
import wherefrom.quantity.Unit;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.PaperTag;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/**
 * The plan drawn: how things are now and each idea is a column, the chosen one on paper; their
 * ratios on one scale, below it what follows from each in figures. A tap chooses a column.
 */
final class PlanColumns extends Region {
  private static final double NAME_MM = 44;
  private static final double HEAD_MM = 21;
  private static final double SCALE_MM = 24;
  private static final double RATIO_MM = 8.5;
  private static final double LINE_MM = 0.8;
  private static final double PAD_MM = 2.5;
  private static final double UNIT_MM = 10;
  private static final int LEAST_ROWS = 3;

  private static final String FIGURE = "\\S+( \\S{1,3})?";

  private record Head(Region zone, FitText name, FitText ratio) {}

  private record Row(FitText name, FitText unit, List<Region> cells) {}

  private final Touch touch;
  private final IntConsumer choose;
  private final PlanScale scale;
  private final PaperTag paper;
  private final FitText title;
  private final TouchKey back;
  private final TouchKey more;
  private final Deque<Integer> before = new ArrayDeque<>();
  private final List<Head> heads = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();
  private int chosen;
  private int start;
  private int shown;

  /**
   * @param choose is given the column that was tapped, counted from the left
   */
  PlanColumns(Touch touch, IntConsumer choose) {
    this.touch = touch;
    this.choose = choose;
    this.scale = new PlanScale(touch);
    this.paper = new PaperTag(touch.scale(), new Region());
    paper.setMouseTransparent(true);
    title = touch.heading("ratio");
    back = touch.key("Up", this::turnBack);
    more = touch.key("Down", this::turnOn);
  }

  private void turnBack() {
    start = before.isEmpty() ? 0 : before.pop();
    requestLayout();
  }

  private void turnOn() {
    before.push(start);
    start += shown;
    requestLayout();
  }

  /** Shows the plan as its model has it now. */
  void show(PlanModel model) {
    List<Integer> columns = model.columns();
    chosen = columns.indexOf(model.chosen());
    heads.clear();
    for (int at = 0; at < columns.size(); at++) {
      heads.add(head(at, model.name(columns.get(at)), model.ratioWords(columns.get(at))));
    }
    rows.clear();
    model.figures().forEach(row -> rows.add(row(row)));
    scale.show(columns.stream().map(model::ratio).toList(), model.wanted(), chosen);
    if (start >= rows.size()) {
      before.clear();
      start = 0;
    }
    requestLayout();
  }

  private Head head(int at, String name, String ratio) {
    Region zone = touch.target(new Region(), () -> choose.accept(at));
    zone.getStyleClass().add("drawn-zone");
    zone.setAccessibleRole(AccessibleRole.BUTTON);
    zone.setAccessibleText(name + (ratio.isEmpty() ? "" : ", ratio " + ratio));
    FitText figure = touch.fit(ratio, RATIO_MM, Scale.SMALL_MM, true).centred();
    return new Head(zone, touch.small(name).centred(), figure);
  }

  private Row row(PlanTableRows.Row row) {
    FitText shownUnit =
        touch.small(row.unit().map(Unit::symbol).orElse("")).align(Pos.CENTER_RIGHT);
    shownUnit.getStyleClass().add("second");
    return new Row(touch.small(row.title()), shownUnit, cells(row));
  }

  private List<Region> cells(PlanTableRows.Row row) {
    List<Region> cells = new ArrayList<>();
    for (int at = 0; at < row.cells().size(); at++) {
      PlanTableRows.Cell cell = row.cells().get(at);
      String words = cell.words().replaceFirst(" ± [0-9.]+", "");
      FitText figure = touch.fit(words, Scale.SMALL_MM, Scale.SMALL_MM, at == chosen);
      figure.align(Pos.CENTER_RIGHT).setAccessibleText(cell.words() + " " + cell.mark());
      cells.add(
          cell.marked().isPresent() ? new Marked(figure, cell.marked().get().isBad()) : figure);
    }
    return cells;
  }

  /** A figure with its mark: a full triangle, under or touching; an empty one, too near to say. */
  private final class Marked extends Region {
    private final FitText figure;
    private final Polygon mark;

    private Marked(FitText figure, boolean under) {
      this.figure = figure;
      double side = touch.scale().px(Scale.SMALL_MM);
      mark = new Polygon(0, 0, side, 0, side / 2, side);
      mark.getStyleClass().add(under ? "margin-under" : "margin-near");
      mark.setManaged(false);
      getChildren().setAll(figure, mark);
    }

    @Override
    protected double computeMinHeight(double width) {
      return figure.minHeight(width);
    }

    @Override
    protected double computeMinWidth(double height) {
      return figure.leastLineWidth() + touch.scale().px(Scale.SMALL_MM + 1);
    }

    @Override
    protected void layoutChildren() {
      figure.resizeRelocate(0, 0, getWidth(), getHeight());
      double side = touch.scale().px(Scale.SMALL_MM);
      double x = getWidth() - figure.leastLineWidth() - side - touch.scale().px(1);
      mark.relocate(Math.max(0, x), (getHeight() - side) / 2);
    }
  }

  private double px(double mm) {
    return touch.scale().px(mm);
  }

  /** Figures stand in one line; words may have several. */
  private static double wide(Region cell) {
    boolean figure = cell instanceof FitText words && words.words().matches(FIGURE);
    return figure ? ((FitText) cell).leastLineWidth() : cell.minWidth(-1);
  }

  private double widest() {
    double figures =
        rows.stream()
            .flatMap(row -> row.cells().stream())
            .mapToDouble(PlanColumns::wide)
            .max()
            .orElse(0);
    double names = heads.stream().mapToDouble(head -> head.name().leastLineWidth()).max().orElse(0);
    return Math.max(px(Scale.KEY_MM), Math.max(figures, names) + 2 * px(PAD_MM));
  }

  /** Whether a room is large enough for all columns and a few rows. */
  boolean hasRoom(double width, double height) {
    double column = column(width);
    boolean whole = fitting(0, column, height - top() - px(2)) >= rows.size();
    return !touch.isLarge()
        && (whole ? column : column(width - side())) >= widest()
        && height >= px(HEAD_MM + SCALE_MM) + LEAST_ROWS * touch.small("0").minHeight(column);
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

  private double column(double width) {
    return Math.floor((width - px(NAME_MM)) / Math.max(1, heads.size()));
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

  @Override
  protected void layoutChildren() {
    double top = top();
    double room = getHeight() - top - px(2);
    boolean whole = fitting(0, column(getWidth()), room) >= rows.size();
    double column = column(whole ? getWidth() : getWidth() - side());
    shown = fitting(start, column, room);
    place(whole);
    head(column);
    scale.setVisible(scale.isDrawn());
    scale.columns(px(NAME_MM), column);
    scale.resizeRelocate(0, px(HEAD_MM), px(NAME_MM) + heads.size() * column, px(SCALE_MM) - px(3));
    rows(top, column);
    turning();
  }

  private double top() {
    return px(HEAD_MM) + (scale.isDrawn() ? px(SCALE_MM) : 0) + px(2);
  }

  /** What the keys that turn the rows take on the right, where every list has them. */
  private double side() {
    return Math.ceil(Math.max(back.minWidth(-1), more.minWidth(-1))) + touch.scale().gap();
  }

  private void turning() {
    back.offer(start > 0);
    more.offer(start + shown < rows.size());
    double wide = side() - touch.scale().gap();
    double high = Math.ceil(px(Scale.KEY_MM));
    double x = getWidth() - wide;
    back.resizeRelocate(x, 0, wide, high);
    more.resizeRelocate(x, getHeight() - high, wide, high);
  }

  private void place(boolean whole) {
    List<Node> placed = new ArrayList<>(List.of(paper, title, scale));
    heads.forEach(head -> placed.addAll(List.of(head.name(), head.ratio())));
    for (Row row : rows.subList(start, start + shown)) {
      placed.add(row.name());
      placed.add(row.unit());
      placed.addAll(row.cells());
    }
    heads.forEach(head -> placed.add(head.zone()));
    if (!whole) {
      placed.addAll(List.of(back, more));
    }
    if (!getChildren().equals(placed)) {
      getChildren().setAll(placed);
      placed.forEach(Node::applyCss);
    }
  }

  private void head(double column) {
    double name = touch.small("N").minHeight(column);
    title.resizeRelocate(0, name, px(NAME_MM), px(HEAD_MM) - name - px(2));
    for (int at = 0; at < heads.size(); at++) {
      Head head = heads.get(at);
      double x = px(NAME_MM) + at * column;
      inked(head.name(), at);
      inked(head.ratio(), at);
      head.name().resizeRelocate(x, px(1), column, name);
      head.ratio().resizeRelocate(x, px(1) + name, column, px(HEAD_MM) - name - px(3));
      double gap = touch.scale().gap();
      head.zone().resizeRelocate(x + gap / 2, 0, column - gap, getHeight());
    }
    paper.setVisible(chosen >= 0);
    paper.resizeRelocate(px(NAME_MM) + chosen * column, 0, column, getHeight());
  }

  private void rows(double top, double column) {
    double y = top;
    for (int at = 0; at < shown; at++) {
      Row row = rows.get(start + at);
      double high = high(row, column);
      row.name().resizeRelocate(0, y, nameWide(row), high);
      row.unit().resizeRelocate(px(NAME_MM - UNIT_MM), y, px(UNIT_MM - 3), high);
      for (int one = 0; one < row.cells().size(); one++) {
        Region cell = row.cells().get(one);
        inked(cell, one);
        double x = px(NAME_MM) + one * column + px(PAD_MM);
        cell.resizeRelocate(x, y, column - 2 * px(PAD_MM), high);
      }
      y += high;
    }
  }

  /** The chosen column's words lie on paper. */
  private void inked(Region words, int column) {
    words.getStyleClass().remove("on-paper");
    if (column == chosen) {
      words.getStyleClass().add("on-paper");
    }
  }
}
