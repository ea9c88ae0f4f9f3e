package wherefrom.ui.newjob;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.drawn.EngineView;

/** The engine as it is chosen, beside it the choices, below them the tag that begins the job. */
final class NewJobView extends Region {
  private static final double DRAWN = 0.46;
  private static final double LEAST_DRAWN_MM = 60;
  private static final double SPARE_MM = 2.5;

  /** The tag stands below the drawing where that is as wide as this, as on glass that lies. */
  private static final double TAG_MM = 66;

  private final Touch touch;
  private final double gap;
  private final EngineView engine;
  private final TouchKey turn;
  private final List<List<Region>> forms;
  private final TagKey tag;
  private final List<Region> least;
  private List<Region> rows;

  /**
   * @param forms all choices, and what stands for them where the glass has no room for all: the
   *     fewest rows last
   */
  NewJobView(Touch touch, EngineView engine, TouchKey turn, List<List<Region>> forms, TagKey tag) {
    this.touch = touch;
    this.gap = touch.scale().gap();
    this.engine = engine;
    this.turn = turn;
    this.forms = List.copyOf(forms);
    this.least = forms.get(forms.size() - 1);
    this.rows = least;
    this.tag = tag;
    getChildren().addAll(engine, turn);
    forms.forEach(getChildren()::addAll);
    getChildren().add(tag);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  private double tagHeight(double width) {
    return Math.max(touch.scale().px(Scale.PRIMARY_MM), tag.minHeight(width));
  }

  private double rowsHeight(List<Region> rows, double width) {
    return rows.stream().mapToDouble(row -> row.minHeight(width) + gap).sum();
  }

  private double columnHeight(List<Region> rows, double width) {
    return rowsHeight(rows, width) + tagHeight(width);
  }

  /** The tag's words keep half of the room above and below them. */
  private double leastColumn(List<Region> rows, double width) {
    return columnHeight(rows, width) - touch.scale().px(SPARE_MM);
  }

  private double leastWidth(List<Region> rows) {
    double widest = rows.stream().mapToDouble(row -> row.minWidth(-1)).max().orElse(0);
    return Math.max(widest, tag.minWidth(-1));
  }

  private static double left(double width) {
    return Math.floor(DRAWN * width);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return leastWidth(least);
  }

  @Override
  protected double computeMinHeight(double width) {
    double column = width - left(width) - gap;
    if (left(width) >= touch.scale().px(TAG_MM) && column >= leastWidth(least)) {
      return rowsHeight(least, column) - gap;
    }
    return leastColumn(least, width);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double height = getHeight();
    choose(width, height);
    if (height > width) {
      double low = columnHeight(rows, width);
      column(0, height - low, width, low);
      drawing(width, height - low - gap);
      return;
    }
    double left = left(width);
    double column = width - left - gap;
    boolean wide = left >= touch.scale().px(LEAST_DRAWN_MM) && column >= leastWidth(rows);
    boolean drawn = wide && leastColumn(rows, column) <= height && engine.hasRoom(left, height);
    if (wide && !drawn && (isDrawnOverTag(left, height) || leastColumn(rows, width) > height)) {
      tagBelowDrawing(left, height);
      return;
    }
    double x = drawn ? left + gap : 0;
    column(x, 0, width - x, height);
    drawing(drawn ? left : 0, drawn ? height : 0);
  }

  /** The most rows that leave the drawing its room, or that stand where there is no drawing. */
  private void choose(double width, double height) {
    boolean drawn = hasRoom(least, width, height);
    rows =
        forms.stream()
            .filter(form -> drawn ? hasRoom(form, width, height) : stands(form, width, height))
            .findFirst()
            .orElse(least);
    forms.forEach(form -> form.forEach(row -> row.setVisible(form.equals(rows))));
  }

  private boolean stands(List<Region> form, double width, double height) {
    return height < width && width >= leastWidth(form) && leastColumn(form, width) <= height;
  }

  /** Whether rows stand beside the drawing, or below it, and leave it its room. */
  private boolean hasRoom(List<Region> form, double width, double height) {
    if (height > width) {
      return width >= leastWidth(form)
          && engine.hasRoom(width, Math.max(0, height - columnHeight(form, width) - gap));
    }
    double left = left(width);
    double column = width - left - gap;
    return left >= touch.scale().px(LEAST_DRAWN_MM)
        && column >= leastWidth(form)
        && leastColumn(form, column) <= height
        && engine.hasRoom(left, height);
  }

  private boolean isDrawnOverTag(double width, double height) {
    return engine.hasRoom(width, Math.max(0, height - tagHeight(width) - gap));
  }

  /** Low glass: the rows take all the height beside the drawing. */
  private void tagBelowDrawing(double left, double height) {
    double x = left + gap;
    rows(x, 0, getWidth() - x);
    double low = tagHeight(left);
    Panes.place(tag, 0, height - low, left, low);
    engine.setVisible(engine.hasRoom(left, height - low - gap));
    turn.setVisible(false);
    Panes.place(engine, 0, 0, left, Math.max(1, height - low - gap));
  }

  private void drawing(double width, double height) {
    double low = turn.minHeight(width);
    boolean turned = engine.hasRoom(width, Math.max(0, height - low - gap));
    double room = turned ? height - low - gap : height;
    boolean drawn = engine.hasRoom(width, Math.max(0, room));
    engine.setVisible(drawn);
    turn.setVisible(turned);
    if (drawn) {
      Panes.place(engine, 0, 0, width, room);
    }
    if (turned) {
      Panes.place(turn, 0, height - low, width, low);
    }
  }

  /** Where the next one would stand. */
  private double rows(double x, double y, double width) {
    double top = y;
    for (Region row : rows) {
      double high = row.minHeight(width);
      Panes.place(row, x, top, width, high);
      top += high + gap;
    }
    return top;
  }

  private void column(double x, double y, double width, double height) {
    double top = rows(x, y, width);
    double bottom = Math.max(top, y + height - tagHeight(width));
    Panes.place(tag, x, bottom, width, y + height - bottom);
  }
}
