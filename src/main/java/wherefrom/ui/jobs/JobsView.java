package wherefrom.ui.jobs;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.TagPlate;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/** The tags of the last jobs, as many as find room, the keys below them. */
final class JobsView extends Region {
  private static final double MOST_MM = 62;

  private final double gap;
  private final double most;
  private final Tiles keys;
  private List<TagPlate> tags = List.of();

  JobsView(Touch touch, Tiles keys) {
    this.gap = touch.scale().gap();
    this.most = touch.scale().px(MOST_MM);
    this.keys = keys;
    getChildren().setAll(keys);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  void show(List<TagPlate> jobs) {
    tags = List.copyOf(jobs);
    List<Node> all = new ArrayList<>(jobs);
    all.add(keys);
    getChildren().setAll(all);
  }

  @Override
  protected double computeMinWidth(double height) {
    return keys.minWidth(-1);
  }

  @Override
  protected double computeMinHeight(double width) {
    double first = tags.isEmpty() ? 0 : tags.get(0).minHeight(width) + gap;
    return first + keys.minHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double low = keys.minHeight(width);
    keys.resizeRelocate(0, getHeight() - low, width, low);
    int shown = fitting(width, getHeight() - low - gap);
    double room = getHeight() - low - shown * gap;
    double each = shown == 0 ? 0 : Math.min(most, Math.floor(room / shown));
    for (int at = 0; at < tags.size(); at++) {
      tags.get(at).setVisible(at < shown);
      tags.get(at).resizeRelocate(0, at * (each + gap), width, each);
    }
  }

  private int fitting(double width, double room) {
    double used = 0;
    int count = 0;
    for (TagPlate tag : tags) {
      used += tag.prefHeight(width) + (count > 0 ? gap : 0);
      if (count > 0 && used > room) {
        break;
      }
      count++;
    }
    return count;
  }
}
