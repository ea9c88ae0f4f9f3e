package wherefrom.ui.jobs;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.geometry.Point2D;
import javafx.geometry.Pos;
import javafx.scene.layout.Region;
import wherefrom.drawing.Asked;
import wherefrom.drawing.PartState;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.parts.PartKind;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.TagPlate;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.Wire;
import wherefrom.ui.drawn.Drawn;
import wherefrom.ui.drawn.DrawnEngine;

/**
 * No job yet: what the program is for in three sentences on a wire, and the tag that begins one.
 */
final class NoJobsView extends Region {
  static final List<String> SENTENCES =
      List.of(
          "Tag each part as it comes out, and scan it.",
          "Look, measure, decide. Wash. Wait for the machine shop.",
          "Scan the part and the place. The wrong place stops you.");

  private static final double FIGURE_MM = 10.7;
  private static final double TAG_SHARE = 0.52;

  /** Beside the words it may be so much smaller: between them it touches their letters. */
  private static final double ENOUGH = 0.75;

  /** About how wide an engine is for its height. */
  private static final double STRETCH = 1.9;

  private record Line(FitText figure, FitText words) {}

  private final double gap;
  private final TagPlate tag;
  private final Tiles keys;
  private final List<Line> lines = new ArrayList<>();
  private final List<Wire> wires = new ArrayList<>();

  NoJobsView(Touch touch, Runnable newJob, Tiles keys) {
    this.gap = touch.scale().gap();
    this.keys = keys;
    TagPlate plate = new TagPlate(touch.scale(), new Face(touch), true, "New job");
    tag = touch.target(plate, newJob);
    double factor = touch.scale().textFactor();
    for (int at = 0; at < SENTENCES.size(); at++) {
      FitText figure =
          touch.fit(Integer.toString(at + 1), FIGURE_MM / factor, Scale.SMALL_MM, true);
      Line line = new Line(figure.align(Pos.TOP_LEFT), touch.small(SENTENCES.get(at)));
      line.words().align(Pos.TOP_LEFT);
      lines.add(line);
      getChildren().addAll(line.figure(), line.words());
      if (at > 0) {
        wires.add(new Wire(touch.scale()));
      }
    }
    getChildren().addAll(wires);
    getChildren().addAll(tag, keys);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  /** What stands on the tag: an engine that could be the first. */
  private static final class Face extends Region {
    private final FitText words;
    private final FitText more;
    private final DrawnEngine engine;
    private final double least;
    private final double gap;

    private Face(Touch touch) {
      words = touch.fit("New job", FIGURE_MM / touch.scale().textFactor(), Scale.SMALL_MM, true);
      more = touch.small("choose the engine");
      least = touch.scale().px(20);
      gap = touch.scale().gap();
      Layout layout = ReadyLayouts.first();
      Asked asked = Asked.of(PartKind.alwaysOn());
      engine =
          DrawnEngine.shown(touch, layout, asked, new Drawn(layout, asked, touch.scale()).above());
      engine.show(place -> PartState.IN, Set.of());
      getChildren().setAll(engine, words, more);
    }

    @Override
    protected double computeMinHeight(double width) {
      return words.minHeight(width) + more.minHeight(width);
    }

    @Override
    protected double computeMinWidth(double height) {
      return Math.max(words.leastLineWidth(), more.minWidth(-1));
    }

    @Override
    protected void layoutChildren() {
      double high = Math.min(words.prefHeight(getWidth()), getHeight() / 2);
      double low = more.minHeight(getWidth());
      double room = getHeight() - high - low;
      double beside = getWidth() - Math.max(words.leastLineWidth(), more.leastLineWidth()) - gap;
      if (beside / STRETCH > ENOUGH * room) {
        beside(beside, Math.min(getHeight(), beside));
        return;
      }
      Panes.place(words, 0, 0, getWidth(), high);
      Panes.place(more, 0, getHeight() - low, getWidth(), low);
      engine.setVisible(room >= least);
      Panes.place(engine, 0, high, getWidth(), Math.max(1, room));
    }

    /** On a low tag the engine stands beside the words, which are one below the other. */
    private void beside(double wide, double high) {
      double left = getWidth() - wide - gap;
      double low = more.minHeight(left);
      double name = Math.min(words.prefHeight(left), getHeight() - low);
      double top = (getHeight() - name - low) / 2;
      Panes.place(words, 0, top, left, name);
      Panes.place(more, 0, top + name, left, low);
      engine.setVisible(wide / STRETCH >= least);
      Panes.place(engine, left + gap, (getHeight() - high) / 2, wide, high);
    }
  }

  @Override
  protected double computeMinWidth(double height) {
    return Math.max(keys.minWidth(-1), tag.minWidth(-1));
  }

  @Override
  protected double computeMinHeight(double width) {
    return tag.minHeight(width) + gap + keys.minHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double low = keys.minHeight(width);
    Panes.place(keys, 0, getHeight() - low, width, low);
    double high = getHeight() - low - gap;
    if (getHeight() > width) {
      double words = wordsHeight(width);
      boolean room = high - words - gap >= tag.minHeight(width);
      tell(room);
      Panes.place(tag, 0, 0, width, room ? high - words - gap : high);
      if (room) {
        words(0, high - words, width, words);
      }
      return;
    }
    double wide = Math.floor(TAG_SHARE * width);
    boolean told = wordsHeight(width - wide - 2 * gap) <= high;
    Panes.place(tag, 0, 0, told ? wide : width, high);
    tell(told);
    if (told) {
      words(wide + 2 * gap, 0, width - wide - 2 * gap, high);
    }
  }

  private void tell(boolean told) {
    lines.forEach(
        line -> {
          line.figure().setVisible(told);
          line.words().setVisible(told);
        });
    wires.forEach(wire -> wire.setVisible(told));
  }

  private double figureWidth() {
    return lines.get(0).figure().prefWidth(-1) + gap;
  }

  private double wordsHeight(double width) {
    double inner = width - figureWidth();
    return lines.stream().mapToDouble(line -> line.words().minHeight(inner)).sum()
        + (lines.size() - 1) * gap;
  }

  private void words(double x, double top, double width, double high) {
    double inner = width - figureWidth();
    double spare = (high - wordsHeight(width)) / lines.size() + gap;
    double y = top;
    for (int at = 0; at < lines.size(); at++) {
      Line line = lines.get(at);
      double words = line.words().minHeight(inner);
      Panes.place(line.figure(), x, y, figureWidth() - gap, line.figure().prefHeight(-1));
      Panes.place(line.words(), x + figureWidth(), y, inner, words);
      double next = y + words + spare;
      if (at < wires.size()) {
        double middle = x + (figureWidth() - gap) / 2;
        double from = y + line.figure().prefHeight(-1) + gap / 4;
        wires
            .get(at)
            .lead(
                next - gap / 4 > from
                    ? List.of(new Point2D(middle, from), new Point2D(middle, next - gap / 4))
                    : List.of());
      }
      y = next;
    }
  }
}
