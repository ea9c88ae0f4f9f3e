package wherefrom.ui.controls;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.Region;

/** A list of any length in pages of whole rows, with large keys to turn them. */
public final class Pager<T> extends Region {
  private static final int MEASURED = 24;

  /** So many rows are likely to stand on one page. */
  private static final int FEW = 3;

  private final Touch touch;
  private final Function<T, ? extends Region> maker;
  private final boolean stretched;
  private final double gap;
  private final PagerKeys turning;
  private final List<Integer> starts = new ArrayList<>(List.of(0));
  private int shownRows;
  private boolean roomy;
  private List<T> items = List.of();
  private List<Region> rows = new ArrayList<>();

  private Pager(Touch touch, Function<T, ? extends Region> maker, boolean stretched) {
    this.touch = touch;
    this.maker = maker;
    this.stretched = stretched;
    this.gap = touch.scale().gap();
    turning = new PagerKeys(touch, this::turnBack, this::turnOn);
  }

  /** A list whose rows are as high as their words need. */
  public static <T> Pager<T> list(Touch touch, Function<T, ? extends Region> maker) {
    return Panes.grow(new Pager<>(touch, maker, false));
  }

  /** Rows that share the whole height where they all fit. */
  public static <T> Pager<T> stretched(Touch touch, Function<T, ? extends Region> maker) {
    return Panes.grow(new Pager<>(touch, maker, true));
  }

  /** Shows these rows from the first. */
  public void setItems(List<? extends T> newItems) {
    starts.clear();
    starts.add(0);
    refill(newItems);
  }

  /** Shows these rows where the list stood, as far as it still reaches so far. */
  public void refill(List<? extends T> newItems) {
    items = List.copyOf(newItems);
    rows = new ArrayList<>();
    while (starts.size() > 1 && starts.get(starts.size() - 1) >= items.size()) {
      starts.remove(starts.size() - 1);
    }
    requestLayout();
  }

  /** A row that says something about what is listed, and is not counted with it. */
  public static <R extends Region> R uncounted(R row) {
    PagerCount.leaveOut(row);
    return row;
  }

  /** What the keys that turn a list take of its width, with the gap before them, in pixels. */
  public double turningWidth() {
    return turning.columnWide() + gap;
  }

  private int start() {
    return starts.get(starts.size() - 1);
  }

  /** The ways that the keys of a keyboard turn a list. */
  public enum Turn {
    BACK,
    ON,
    FIRST,
    LAST
  }

  /** Turns to another page; where there is none that way it stays. */
  public void turn(Turn way) {
    switch (way) {
      case BACK -> turnBack();
      case ON -> turnOn();
      case FIRST -> {
        starts.subList(1, starts.size()).clear();
        requestLayout();
      }
      case LAST -> turnToEnd();
    }
  }

  private void turnToEnd() {
    int before = -1;
    while (before != start()) {
      before = start();
      turnOn();
      // How many rows stand on a page is known once they are laid out.
      layout();
    }
  }

  private void turnBack() {
    if (starts.size() > 1) {
      starts.remove(starts.size() - 1);
      requestLayout();
    }
  }

  private void turnOn() {
    int next = start() + shownRows;
    if (next < items.size()) {
      starts.add(next);
      requestLayout();
    }
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    double widest = 0;
    for (int at = 0; at < Math.min(items.size(), MEASURED); at++) {
      widest = Math.max(widest, row(at).minWidth(-1));
    }
    boolean turned = items.size() > FEW;
    double below = Math.max(widest, turning.rowWide());
    return !turned ? widest : touch.isLarge() ? below : widest + turningWidth();
  }

  @Override
  protected double computeMinHeight(double width) {
    if (items.isEmpty()) {
      return 0;
    }
    double keys = touch.scale().px(2 * Scale.KEY_MM) + gap;
    double beside = width <= 0 ? -1 : width - turningWidth();
    double least = Math.max(keys, tallest(beside));
    boolean narrow = width > 0 && isNarrow(width);
    double below = tallest(width) + (items.size() > 1 ? gap + turning.rowHigh() : 0);
    return narrow ? below : touch.isLarge() ? Math.min(least, below) : least;
  }

  @Override
  protected double computePrefHeight(double width) {
    double sum = 0;
    for (int at = 0; at < items.size(); at++) {
      sum += row(at).prefHeight(width) + gap;
    }
    return Math.max(0, sum - gap);
  }

  /** What the rows that come first need; a list may be far too long to make them all. */
  private double tallest(double width) {
    double tallest = 0;
    for (int at = 0; at < Math.min(items.size(), MEASURED); at++) {
      tallest = Math.max(tallest, row(at).minHeight(width));
    }
    return tallest;
  }

  /** Whether the rows have no room beside the keys. */
  private boolean isNarrow(double width) {
    double widest = 0;
    for (int at = 0; at < Math.min(items.size(), MEASURED); at++) {
      widest = Math.max(widest, row(at).minWidth(-1));
    }
    return width < widest + turningWidth();
  }

  /**
   * Whether the keys stand below the rows, which then have the whole width: beside them they may
   * take over a quarter of it. They stay beside the rows where more of those are seen so.
   */
  private boolean isBelow(double width, double height) {
    double high = height - turning.rowHigh() - gap;
    if (turning.rowWide() > width || tallest(width) > high) {
      return false;
    }
    boolean spared = !touch.isLarge() && turningWidth() <= width / 4;
    if (isNarrow(width) || spared) {
      return isNarrow(width);
    }
    double beside = width - turningWidth();
    return pages(width, high) < pages(beside, height)
        || (pages(width, high) == pages(beside, height)
            && fitting(0, width, high) >= fitting(0, beside, height));
  }

  /** How many pages the rows that come first need. */
  private int pages(double width, double height) {
    int pages = 0;
    int at = 0;
    while (at < Math.min(items.size(), MEASURED)) {
      at += fitting(at, width, height);
      pages++;
    }
    return pages;
  }

  private Region row(int at) {
    while (rows.size() <= at) {
      rows.add(maker.apply(items.get(rows.size())));
    }
    return rows.get(at);
  }

  /** Rows have all the height they like where all of them then fit one page. */
  private double height(Node row, double width) {
    return roomy ? row.prefHeight(width) : row.minHeight(width);
  }

  /** How many rows from here fit the height, at least one. */
  private int fitting(int from, double width, double height) {
    double used = 0;
    int count = 0;
    while (from + count < items.size()) {
      used += height(row(from + count), width);
      if (count > 0 && used > height) {
        break;
      }
      used += gap;
      count++;
    }
    return count;
  }

  @Override
  protected void layoutChildren() {
    roomy = !stretched && prefHeight(getWidth()) <= getHeight();
    boolean whole = starts.size() == 1 && fitting(0, getWidth(), getHeight()) >= items.size();
    boolean below = !whole && isBelow(getWidth(), getHeight());
    double width = whole || below ? getWidth() : getWidth() - turningWidth();
    double height = below ? getHeight() - turning.rowHigh() - gap : getHeight();
    shownRows = fitting(start(), width, height);
    List<Node> shown = new ArrayList<>();
    for (int at = start(); at < start() + shownRows; at++) {
      shown.add(row(at));
    }
    List<Node> placed = new ArrayList<>(shown);
    if (!whole) {
      offerTurning(below);
      placed.add(turning);
    }
    if (!getChildren().equals(placed)) {
      getChildren().setAll(placed);
      placed.forEach(Node::applyCss);
    }
    place(shown, width, height);
    if (below) {
      Panes.place(turning, 0, height + gap, getWidth(), turning.rowHigh());
    } else if (!whole) {
      Panes.place(turning, width + gap, 0, turning.columnWide(), getHeight());
    }
  }

  private void offerTurning(boolean below) {
    turning.across(below);
    int before = PagerCount.of(items.subList(0, start()));
    int through = PagerCount.of(items.subList(0, start() + shownRows));
    boolean counts = through > before;
    turning.offer(
        starts.size() > 1,
        start() + shownRows < items.size(),
        counts ? (before + 1) + "–" + through : "",
        counts ? "of " + PagerCount.of(items) : "");
  }

  private void place(List<Node> shown, double width, double height) {
    double used = (shown.size() - 1) * gap;
    for (Node row : shown) {
      used += height(row, width);
    }
    double extra = stretched && !shown.isEmpty() ? (height - used) / shown.size() : 0;
    double down = 0;
    for (Node row : shown) {
      double high = Math.floor(height(row, width) + Math.max(0, extra));
      Panes.place(row, 0, down, width, high);
      down += high + gap;
    }
    Levelled.level(shown);
  }
}
