package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.PaperTag;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/**
 * The plan drawn: how things are now and each idea is a column, the chosen one on paper; their
 * ratios on one scale, below it what follows from each in figures. A tap chooses a column.
 */
final class PlanColumns extends Region {
  private static final double HEAD_MM = 21;
  private static final double SCALE_MM = 24;
  private static final double AT_SCALE_MM = 24;
  private static final double RATIO_MM = 8.5;
  private static final double PAD_MM = 2.5;
  private static final int LEAST_ROWS = 3;

  private record Head(Region zone, FitText name, FitText ratio) {}

  private final Touch touch;
  private final IntConsumer choose;
  private final PlanScale scale;
  private final FigureRows figures;
  private final PaperTag paper;
  private final FitText title;
  private final TouchKey back;
  private final TouchKey more;
  private final List<Head> heads = new ArrayList<>();
  private int chosen;
  private boolean aside;
  private boolean atScale;

  /**
   * @param choose is given the column that was tapped, counted from the left
   */
  PlanColumns(Touch touch, IntConsumer choose) {
    this.touch = touch;
    this.choose = choose;
    this.scale = new PlanScale(touch);
    this.figures = new FigureRows(touch);
    this.paper = new PaperTag(touch.scale(), new Region());
    paper.setMouseTransparent(true);
    title = touch.heading("ratio");
    back = touch.key("Up", this::turnBack).tight();
    more = touch.key("Down", this::turnOn).tight();
  }

  private void turnBack() {
    figures.turnBack();
    requestLayout();
  }

  private void turnOn() {
    figures.turnOn();
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
    figures.show(model.figures(), chosen);
    scale.show(columns.stream().map(model::ratio).toList(), model.wanted(), chosen);
    requestLayout();
  }

  private Head head(int at, String name, String ratio) {
    Region zone = touch.target(new Region(), () -> choose.accept(at));
    zone.getStyleClass().add(Touch.ZONE);
    zone.setAccessibleRole(AccessibleRole.BUTTON);
    zone.setAccessibleText(name + (ratio.isEmpty() ? "" : ", ratio " + ratio));
    FitText figure = touch.fit(ratio, RATIO_MM, Scale.SMALL_MM, true).centred();
    return new Head(zone, touch.small(name).centred(), figure);
  }

  private double px(double mm) {
    return touch.scale().px(mm);
  }

  private double widest() {
    double names = heads.stream().mapToDouble(head -> head.name().leastLineWidth()).max().orElse(0);
    return Math.max(px(Scale.KEY_MM), Math.max(figures.widest(), names) + 2 * px(PAD_MM));
  }

  /** Whether a room is large enough for all columns and a few rows. */
  boolean hasRoom(double width, double height) {
    double column = column(width);
    return !touch.isLarge()
        && column >= widest()
        && height >= px(HEAD_MM + SCALE_MM) + LEAST_ROWS * touch.small("0").minHeight(column);
  }

  private double column(double width) {
    return Math.floor((width - px(FigureRows.NAME_MM)) / Math.max(1, heads.size()));
  }

  @Override
  protected void layoutChildren() {
    double top = top();
    double room = getHeight() - top - px(2);
    boolean whole = figures.areWhole(column(getWidth()), room);
    aside = !whole && column(getWidth() - side()) >= widest();
    double column = column(aside ? getWidth() - side() : getWidth());
    atScale = !whole && !aside;
    title.setVisible(!atScale || scale.hasRoomAtLeft());
    place(whole, figures.settle(whole, column, room));
    head(column);
    scale.setVisible(scale.isDrawn());
    scale.columns(px(FigureRows.NAME_MM), column);
    Panes.place(
        scale,
        0,
        px(HEAD_MM),
        px(FigureRows.NAME_MM) + heads.size() * column,
        px(SCALE_MM) - px(3));
    figures.place(top, column);
    turning();
  }

  private double top() {
    return px(HEAD_MM) + (scale.isDrawn() ? px(SCALE_MM) : 0) + px(2);
  }

  /**
   * What the keys that turn the rows take on the right, where every list has them. Where they would
   * leave the columns too little they stand over the names, in the place of the title.
   */
  private double side() {
    return Math.ceil(Math.max(back.minWidth(-1), more.minWidth(-1))) + touch.scale().gap();
  }

  private void turning() {
    back.offer(!figures.isFirst());
    more.offer(!figures.isLast());
    double wide = side() - touch.scale().gap();
    double high = Math.ceil(px(Scale.KEY_MM));
    double right = getWidth() - wide;
    Panes.place(back, aside ? right : 0, 0, wide, high);
    Panes.place(more, aside ? right : side(), aside ? getHeight() - high : 0, wide, high);
  }

  private void place(boolean whole, List<Node> rows) {
    List<Node> placed = new ArrayList<>(List.of(paper, title, scale));
    heads.forEach(head -> placed.addAll(List.of(head.name(), head.ratio())));
    placed.addAll(rows);
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
    if (atScale) {
      // The keys that turn the rows have its place: it stands left of the scale's figures.
      Panes.place(title, 0, px(HEAD_MM), px(AT_SCALE_MM), px(SCALE_MM) - px(3));
    } else {
      Panes.place(title, 0, name, px(FigureRows.NAME_MM), px(HEAD_MM) - name - px(2));
    }
    for (int at = 0; at < heads.size(); at++) {
      Head head = heads.get(at);
      double x = px(FigureRows.NAME_MM) + at * column;
      inked(head.name(), at);
      inked(head.ratio(), at);
      Panes.place(head.name(), x, px(1), column, name);
      Panes.place(head.ratio(), x, px(1) + name, column, px(HEAD_MM) - name - px(3));
      double gap = touch.scale().gap();
      Panes.place(head.zone(), x + gap / 2, 0, column - gap, getHeight());
    }
    paper.setVisible(chosen >= 0);
    Panes.place(paper, px(FigureRows.NAME_MM) + chosen * column, 0, column, getHeight());
  }

  /** The chosen column's words lie on paper. */
  private void inked(Region words, int column) {
    words.getStyleClass().remove("on-paper");
    if (column == chosen) {
      words.getStyleClass().add("on-paper");
    }
  }
}
