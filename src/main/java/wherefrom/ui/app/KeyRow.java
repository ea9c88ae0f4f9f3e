package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;

/**
 * The further keys of a screen, below it. Those that have no room, as with large text, are a list
 * behind the last one.
 */
public final class KeyRow extends Region {
  private static final String REST = "More";

  /** A key: its words and what it does. */
  public record Act(String words, Runnable run) {}

  private final ScreenContext context;
  private final int mostRows;
  private final double gap;
  private final Tiles tiles;
  private List<Act> acts;
  private int shown = -1;
  private List<TouchKey> measured = List.of();
  private List<Object> measuredIn = List.of();

  private KeyRow(ScreenContext context, int mostRows, List<Act> acts) {
    this.context = context;
    this.mostRows = mostRows;
    this.gap = context.scale().gap();
    this.acts = List.copyOf(acts);
    this.tiles = Tiles.row(context.scale());
    getChildren().setAll(tiles);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  /** One row. */
  public static KeyRow of(ScreenContext context, Act... acts) {
    return new KeyRow(context, 1, List.of(acts));
  }

  /** Up to so many rows. */
  public static KeyRow of(ScreenContext context, int mostRows, List<Act> acts) {
    return new KeyRow(context, mostRows, acts);
  }

  /** Has other keys from now on; those that say what they said do what is done now. */
  public void setActs(List<Act> changed) {
    boolean same = words(changed).equals(words(acts));
    acts = List.copyOf(changed);
    if (!same) {
      shown = -1;
      measured = List.of();
      requestLayout();
    }
  }

  private static List<String> words(List<Act> acts) {
    return acts.stream().map(Act::words).toList();
  }

  private TouchKey key(Act act) {
    return context.touch().key(act.words(), act.run());
  }

  /** What a key does may have changed since it was drawn. */
  private TouchKey key(int at) {
    return context.touch().key(acts.get(at).words(), () -> acts.get(at).run().run());
  }

  private void showRest() {
    List<Act> rest = acts.subList(shown, acts.size());
    List<Choice<Act>> choices =
        rest.stream().map(act -> new Choice<>(act, act.words(), "")).toList();
    context
        .navigator()
        .open(() -> new ChoiceScreen<>(context, REST, choices, act -> act.run().run()));
  }

  /**
   * How many cells there is room for. Two keys stand as wide as their words need before one hides.
   */
  private int room(double width) {
    if (mostRows == 1 && acts.size() == 2 && pairWidth() <= width) {
      return acts.size();
    }
    int columns = Math.max(1, (int) ((width + gap) / (widest() + gap)));
    return columns * mostRows;
  }

  private double pairWidth() {
    return gap + measured().stream().limit(2).mapToDouble(key -> Math.ceil(key.minWidth(-1))).sum();
  }

  private double widest() {
    return measured().stream().mapToDouble(key -> key.minWidth(-1)).max().orElse(0);
  }

  /** A key for each act, and the one for the rest, of which only the size is asked. */
  private List<TouchKey> measured() {
    List<Object> letters = List.of(context.touch(), context.touch().scale().textFactor());
    if (measured.isEmpty() || !letters.equals(measuredIn)) {
      measuredIn = letters;
      measured =
          Stream.concat(acts.stream(), Stream.of(new Act(REST, () -> {}))).map(this::key).toList();
    }
    return measured;
  }

  /** How many keys it has. */
  int count() {
    return acts.size();
  }

  boolean isEmpty() {
    return acts.isEmpty();
  }

  /** The height that the first keys need where so many stand in a row, each so wide. */
  double highest(int keys, double width) {
    return measured().stream()
        .limit(keys < acts.size() ? keys - 1 : Math.min(keys, acts.size()))
        .mapToDouble(key -> key.minHeight(width))
        .max()
        .orElse(0);
  }

  /** The width that so many keys in a row need; one alone for several is the key to the rest. */
  double width(int keys) {
    if (keys == 1 && acts.size() > 1) {
      return Math.ceil(measured().get(acts.size()).minWidth(-1));
    }
    return Math.ceil(keys * Math.ceil(widest()) + (keys - 1) * gap);
  }

  private void fill(double width) {
    int room = room(width);
    int first = acts.size() <= room ? acts.size() : room - 1;
    if (first == shown) {
      return;
    }
    shown = first;
    List<Node> keys = new ArrayList<>();
    for (int at = 0; at < first; at++) {
      keys.add(key(at));
    }
    if (first < acts.size()) {
      keys.add(context.touch().key(REST, this::showRest));
    }
    int columns = (keys.size() + mostRows - 1) / mostRows;
    tiles.setCells(keys, Math.max(1, Math.max(columns, Math.min(keys.size(), room / mostRows))));
    keys.forEach(Node::applyCss);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinHeight(double width) {
    if (width > 0) {
      fill(width);
    }
    return tiles.minHeight(width);
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected double computeMinWidth(double height) {
    return context.scale().px(2 * wherefrom.ui.controls.Scale.KEY_MM) + gap;
  }

  @Override
  protected void layoutChildren() {
    fill(getWidth());
    Panes.place(tiles, 0, 0, getWidth(), getHeight());
  }
}
