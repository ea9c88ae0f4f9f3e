package wherefrom.ui.debris;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/**
 * The engine cut open along its length, its front on the left, with every place where debris is
 * looked for: block, front cover and pan as outlines, filter, dipstick and bucket beside them.
 */
final class OilDrawing extends Region {
  private static final double GAP_MM = 4.6;
  private static final double RIM_MM = 1.4;
  private static final int COLUMNS = 4;
  private static final int ROWS = 3;

  /** Where a place stands on the drawing: column, row, columns wide. */
  private record Cell(int column, int row, int wide) {}

  private static final Map<DebrisPlace, Cell> CELLS =
      Map.of(
          DebrisPlace.VALLEY, new Cell(1, 0, 1),
          DebrisPlace.GALLERY, new Cell(2, 0, 1),
          DebrisPlace.DIPSTICK, new Cell(3, 0, 1),
          DebrisPlace.FRONT_COVER, new Cell(0, 1, 1),
          DebrisPlace.MAINS, new Cell(1, 1, 2),
          DebrisPlace.FILTER_PLEATS, new Cell(3, 1, 1),
          DebrisPlace.PICKUP_SCREEN, new Cell(0, 2, 1),
          DebrisPlace.PAN, new Cell(1, 2, 1),
          DebrisPlace.MAGNETIC_PLUG, new Cell(2, 2, 1),
          DebrisPlace.DRAINED_OIL, new Cell(3, 2, 1));

  private final double gap;
  private final double rim;
  private final Map<DebrisPlace, TouchKey> keys = new EnumMap<>(DebrisPlace.class);
  private final Region front;

  OilDrawing(Touch touch, Consumer<DebrisPlace> tapped) {
    gap = touch.scale().px(GAP_MM);
    rim = touch.scale().px(RIM_MM);
    for (DebrisPlace place : DebrisPlace.values()) {
      keys.put(place, touch.key("", () -> tapped.accept(place)));
    }
    front = touch.small("FRONT").centred();
    Panes.grow(this);
  }

  void set(DebrisPlace place, String words, boolean found) {
    TouchKey key = keys.get(place);
    if (key != null) {
      key.setWords(words);
      key.stress(found);
    }
  }

  @Override
  protected double computeMinHeight(double width) {
    double cell = width <= 0 ? -1 : cellWidth(width);
    double tallest = keys.values().stream().mapToDouble(key -> key.minHeight(cell)).max().orElse(0);
    return ROWS * tallest + (ROWS - 1) * gap + 2 * edge();
  }

  @Override
  public javafx.geometry.Orientation getContentBias() {
    return javafx.geometry.Orientation.HORIZONTAL;
  }

  /** Room for what is drawn round the outer cells. */
  private double edge() {
    return 2.2 * rim;
  }

  private double cellWidth(double width) {
    return Math.floor((width - (COLUMNS - 1) * gap - 2 * edge()) / COLUMNS);
  }

  @Override
  protected void layoutChildren() {
    double wide = cellWidth(getWidth());
    double high = Math.floor((getHeight() - (ROWS - 1) * gap - 2 * edge()) / ROWS);
    List<javafx.scene.Node> all = new ArrayList<>(outlines(wide, high));
    all.addAll(keys.values());
    all.add(front);
    if (!getChildren().containsAll(keys.values())) {
      getChildren().setAll(all);
    } else {
      getChildren().removeIf(Shape.class::isInstance);
      getChildren().addAll(0, outlines(wide, high));
    }
    Tiles.level(List.copyOf(keys.values()), wide, high);
    keys.forEach(
        (place, key) -> place(key, CELLS.getOrDefault(place, new Cell(0, 0, 1)), wide, high));
    place(front, new Cell(0, 0, 1), wide, high);
  }

  private double x(int column, double wide) {
    return edge() + column * (wide + gap);
  }

  private void place(Region node, Cell cell, double wide, double high) {
    Panes.place(
        node,
        x(cell.column(), wide),
        x(cell.row(), high),
        cell.wide() * wide + (cell.wide() - 1) * gap,
        high);
  }

  private List<Shape> outlines(double wide, double high) {
    double tube = x(3, wide) + wide / 2;
    List<Shape> shapes = new ArrayList<>();
    shapes.add(new Line(tube, x(0, high) + high, tube, x(1, high)));
    shapes.add(
        new Line(x(3, wide) - gap, x(1, high) + high / 2, x(3, wide), x(1, high) + high / 2));
    shapes.add(box(1, 0, 2, 2, wide, high));
    shapes.add(box(0, 1, 1, 1, wide, high));
    shapes.add(box(3, 1, 1, 1, wide, high));
    shapes.add(pan(0, 3, wide, high));
    shapes.add(pan(3, 1, wide, high));
    shapes.forEach(shape -> shape.getStyleClass().add("oil-outline"));
    shapes.forEach(shape -> shape.setStrokeWidth(rim / 3));
    shapes.forEach(shape -> shape.setManaged(false));
    return shapes;
  }

  private Shape box(int column, int row, int columns, int rows, double wide, double high) {
    Rectangle box =
        new Rectangle(
            x(column, wide) - rim,
            x(row, high) - rim,
            columns * (wide + gap) - gap + 2 * rim,
            rows * (high + gap) - gap + 2 * rim);
    box.setArcWidth(rim * 2);
    box.setArcHeight(rim * 2);
    return box;
  }

  /** A vessel that is a little narrower at its foot. */
  private Shape pan(int column, int columns, double wide, double high) {
    double left = x(column, wide) - rim;
    double right = left + columns * (wide + gap) - gap + 2 * rim;
    double top = x(2, high) - rim;
    double foot = top + high + 2 * rim;
    return new Polygon(left - rim, top, right + rim, top, right, foot, left, foot);
  }
}
