package wherefrom.ui.home;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.Wire;

/** The areas in rows, on a wire from each to the next; the last one takes the rest of its row. */
final class AreaGrid extends Region {
  private static final int COLUMNS = 3;
  private static final int FEWER = 2;

  private final double gap;
  private final List<Region> areas = new ArrayList<>();
  private final List<Wire> wires = new ArrayList<>();

  AreaGrid(Touch touch, List<? extends Region> keys) {
    gap = touch.scale().gap();
    areas.addAll(keys);
    for (int at = 1; at < keys.size(); at++) {
      wires.add(new Wire(touch.scale()));
    }
    getChildren().addAll(wires);
    getChildren().addAll(areas);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  private int columns(double width, double height) {
    boolean many = height <= width && COLUMNS * widest() + (COLUMNS - 1) * gap <= width;
    return many ? COLUMNS : FEWER;
  }

  private double widest() {
    return areas.stream().mapToDouble(area -> area.minWidth(-1)).max().orElse(0);
  }

  private double high(int columns) {
    int rows = (areas.size() + columns - 1) / columns;
    double each = areas.stream().mapToDouble(area -> area.minHeight(-1)).max().orElse(0);
    return rows * each + (rows - 1) * gap;
  }

  /** Whether all of them have room. */
  boolean fits(double width, double height) {
    int columns = columns(width, height);
    return columns * widest() + (columns - 1) * gap <= width && high(columns) <= height;
  }

  @Override
  protected double computeMinWidth(double height) {
    return FEWER * widest() + gap;
  }

  @Override
  protected double computeMinHeight(double width) {
    return high(COLUMNS);
  }

  @Override
  protected void layoutChildren() {
    int columns = columns(getWidth(), getHeight());
    int rows = (areas.size() + columns - 1) / columns;
    double wide = Math.floor((getWidth() - (columns - 1) * gap) / columns);
    double high = Math.floor((getHeight() - (rows - 1) * gap) / rows);
    for (int at = 0; at < areas.size(); at++) {
      double x = at % columns * (wide + gap);
      boolean last = at == areas.size() - 1;
      int row = at / columns;
      Panes.place(areas.get(at), x, row * (high + gap), last ? getWidth() - x : wide, high);
    }
    for (int at = 0; at < wires.size(); at++) {
      wires.get(at).link(areas.get(at), areas.get(at + 1), gap);
    }
  }
}
