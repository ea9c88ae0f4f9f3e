package wherefrom.ui.jobs;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagPlate;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/** The tags of the last jobs, as many as find room, the keys below them. */
final class JobsView extends Region {
  private static final double MOST_MM = 75;

  /** The only job has more. */
  private static final double MOST_ALONE_MM = 112;

  private final Touch touch;
  private final double gap;
  private final Tiles keys;
  private final FitText note;
  private List<TagPlate> tags = List.of();

  /**
   * @param copy how the copy of the last job stands; may be empty
   */
  JobsView(Touch touch, Tiles keys, String copy) {
    this.touch = touch;
    this.gap = touch.scale().gap();
    this.keys = keys;
    this.note = touch.small(copy);
    note.getStyleClass().add("second");
    getChildren().setAll(keys, note);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  void show(List<TagPlate> jobs) {
    tags = List.copyOf(jobs);
    List<Node> all = new ArrayList<>(jobs);
    all.addAll(List.of(keys, note));
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
    Panes.place(keys, 0, getHeight() - low, width, low);
    double above = getHeight() - low - gap;
    above -= note(width, above);
    int shown = fitting(width, above);
    List<Double> heights = heights(shown, width, above - (shown - 1) * gap);
    double top = 0;
    for (int at = 0; at < tags.size(); at++) {
      TagPlate tag = tags.get(at);
      tag.setVisible(at < shown);
      double high = at < shown ? heights.get(at) : tag.minHeight(width);
      Panes.place(tag, 0, top, width, high);
      top += high + gap;
    }
  }

  /** The words on the copy stand above the keys, where the first tag leaves them room. */
  private double note(double width, double above) {
    double high = note.words().isEmpty() ? 0 : note.minHeight(width) + gap;
    boolean told = high > 0 && above - high >= tags.get(0).minHeight(width);
    note.setVisible(told);
    Panes.place(note, 0, above - high + gap, width, Math.max(0, high - gap));
    return told ? high : 0;
  }

  /** All alike where each then has room for its days; else the first has what the others leave. */
  private List<Double> heights(int shown, double width, double room) {
    double most = touch.scale().px(tags.size() == 1 ? MOST_ALONE_MM : MOST_MM);
    double equal = shown == 0 ? 0 : Math.min(most, Math.floor(room / shown));
    List<Double> heights = new ArrayList<>(Collections.nCopies(shown, equal));
    if (tags.stream().limit(shown).anyMatch(tag -> tag.prefHeight(width) > equal)) {
      double left = room;
      for (int at = shown - 1; at > 0; at--) {
        heights.set(at, tags.get(at).minHeight(width));
        left -= heights.get(at);
      }
      heights.set(0, Math.min(most, left));
    }
    return heights;
  }

  /** As many as have room for two lines each. */
  private int fitting(double width, double room) {
    double used = 0;
    int count = 0;
    for (TagPlate tag : tags) {
      used += tag.minHeight(width) + (count > 0 ? gap : 0);
      if (count > 0 && used > room) {
        break;
      }
      count++;
    }
    return count;
  }
}
