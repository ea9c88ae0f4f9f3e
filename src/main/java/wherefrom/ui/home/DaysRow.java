package wherefrom.ui.home;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.job.shelf.JobDay;
import wherefrom.job.shelf.Standing;
import wherefrom.ui.controls.LinedKey;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.Wire;

/** The five days of the job, keys on a wire; where there is less room, three and two. */
final class DaysRow extends Region {
  private static final int FIRST_ROW = 3;

  private final double gap;
  private final boolean told;
  private final Map<JobDay, LinedKey> keys = new EnumMap<>(JobDay.class);
  private final List<Wire> wires = new ArrayList<>();

  DaysRow(Touch touch, Consumer<JobDay> chosen) {
    gap = touch.scale().gap();
    told = !touch.isLarge();
    for (JobDay day : JobDay.values()) {
      LinedKey key = LinedKey.key(touch, day.word(), "", () -> chosen.accept(day));
      key.tell(told);
      keys.put(day, key);
      if (keys.size() > 1) {
        wires.add(new Wire(touch.scale()));
      }
    }
    getChildren().addAll(wires);
    getChildren().addAll(keys.values());
  }

  void show(Standing standing) {
    keys.forEach(
        (day, key) -> {
          key.say(DayWords.open(standing, day));
          key.select(day == standing.day());
        });
  }

  private List<LinedKey> list() {
    return List.copyOf(keys.values());
  }

  private static double least(List<LinedKey> row) {
    return row.stream().mapToDouble(key -> key.minWidth(-1)).sum();
  }

  private boolean oneRow(double width) {
    return least(list()) + (keys.size() - 1) * gap <= width;
  }

  private double rowHeight() {
    return Math.ceil(list().stream().mapToDouble(key -> key.minHeight(-1)).max().orElse(0));
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    List<LinedKey> all = list();
    double upper = least(all.subList(0, FIRST_ROW)) + (FIRST_ROW - 1) * gap;
    double lower = least(all.subList(FIRST_ROW, all.size())) + (all.size() - FIRST_ROW - 1) * gap;
    return Math.max(upper, lower);
  }

  @Override
  protected double computeMinHeight(double width) {
    return oneRow(width < 0 ? Double.MAX_VALUE : width) ? rowHeight() : 2 * rowHeight() + gap;
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    List<LinedKey> all = list();
    if (oneRow(getWidth())) {
      row(all, 0, getHeight());
    } else {
      double high = Math.floor((getHeight() - gap) / 2);
      row(all.subList(0, FIRST_ROW), 0, high);
      row(all.subList(FIRST_ROW, all.size()), high + gap, high);
    }
    for (int at = 0; at < wires.size(); at++) {
      wires.get(at).link(all.get(at), all.get(at + 1), gap);
    }
  }

  private void row(List<LinedKey> row, double top, double high) {
    double room = getWidth() - (row.size() - 1) * gap;
    double equal = Math.floor(room / row.size());
    boolean alike = row.stream().allMatch(key -> key.minWidth(-1) <= equal);
    double spare = (room - least(row)) / row.size();
    double x = 0;
    for (LinedKey key : row) {
      double wide = alike ? equal : Math.floor(key.minWidth(-1) + spare);
      Panes.place(key, x, top, wide, high);
      x += wide + gap;
    }
  }
}
