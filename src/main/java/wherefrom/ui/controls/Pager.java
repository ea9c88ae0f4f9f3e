package wherefrom.ui.controls;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.Region;

/**
 * A list of any length in pages, with large keys to turn them. Rows stand whole; words that are
 * read may go on on the next page.
 */
public final class Pager<T> extends Region {
  /** So many rows are likely to stand on one page. */
  private static final int FEW = 3;

  private final Touch touch;
  private final Function<T, ? extends Region> maker;
  private final boolean stretched;
  private final double gap;
  private final PagerKeys turning;
  private final List<Pages.Place> starts = new ArrayList<>(List.of(Pages.Place.FIRST));
  private boolean roomy;
  private boolean lined;
  private PagerRows<T> rows;

  private Pager(Touch touch, Function<T, ? extends Region> maker, boolean stretched) {
    this.touch = touch;
    this.maker = maker;
    this.stretched = stretched;
    this.gap = touch.scale().gap();
    rows = new PagerRows<>(maker, List.of(), gap);
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
    toFirst();
    refill(newItems);
  }

  private void toFirst() {
    starts.subList(1, starts.size()).clear();
    requestLayout();
  }

  /** Shows these rows where the list stood, as far as it still reaches so far. */
  public void refill(List<? extends T> newItems) {
    rows = new PagerRows<>(maker, newItems, gap);
    while (starts.size() > 1 && start().item() >= rows.count()) {
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

  private Pages.Place start() {
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
      case FIRST -> toFirst();
      case LAST -> turnToEnd();
    }
  }

  private void turnToEnd() {
    int before = 0;
    while (before < starts.size()) {
      before = starts.size();
      turnOn();
    }
  }

  private void turnBack() {
    if (starts.size() > 1) {
      starts.remove(starts.size() - 1);
      requestLayout();
    }
  }

  private void turnOn() {
    Pages.Place next = room().pages().after(start());
    if (next.item() < rows.count()) {
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
    double widest = rows.widest();
    boolean turned = rows.count() > FEW;
    double below = Math.max(widest, turning.rowWide());
    return !turned ? widest : touch.isLarge() ? below : widest + turningWidth();
  }

  @Override
  protected double computeMinHeight(double width) {
    if (rows.count() == 0) {
      return 0;
    }
    double keys = touch.scale().px(2 * Scale.KEY_MM) + gap;
    double beside = width <= 0 ? -1 : width - turningWidth();
    double least = Math.max(keys, rows.tallest(beside));
    boolean narrow = width > 0 && isNarrow(width);
    double below = rows.tallest(width) + (rows.count() > 1 ? gap + turning.rowHigh() : 0);
    return narrow ? below : touch.isLarge() ? Math.min(least, below) : least;
  }

  @Override
  protected double computePrefHeight(double width) {
    return rows.liked(width);
  }

  /** Whether the rows have no room beside the keys. */
  private boolean isNarrow(double width) {
    return width < rows.widest() + turningWidth();
  }

  /**
   * Whether the keys stand below the rows, which then have the whole width: beside them they may
   * take over a quarter of it. They stay beside the rows where more of those are seen so, and none
   * is too high.
   */
  private boolean isBelow(double width, double height) {
    double high = height - turning.rowHigh() - gap;
    if (turning.rowWide() > width || rows.tallest(width) > high) {
      return false;
    }
    boolean spared = !touch.isLarge() && turningWidth() <= width / 4;
    if (isNarrow(width) || spared) {
      return isNarrow(width);
    }
    double besideWide = width - turningWidth();
    if (rows.tallest(besideWide) > height) {
      return true;
    }
    Pages below = new Pages(rows.firstWide(width), high);
    Pages beside = new Pages(rows.firstWide(besideWide), height);
    int more = Integer.compare(below.count(), beside.count());
    return more < 0
        || (more == 0 && !below.after(Pages.Place.FIRST).isBefore(beside.after(Pages.Place.FIRST)));
  }

  /** The room that the rows have: all of it, beside the keys, or above them. */
  private final class Room {
    private final boolean whole;
    private final boolean below;
    private final double width;
    private final double height;

    Room(double wide, double high) {
      whole = rows.fit(wide, high);
      below = !whole && isBelow(wide, high);
      width = whole || below ? wide : wide - turningWidth();
      height = below ? high - turning.rowHigh() - gap : high;
    }

    Pages pages() {
      return new Pages(rows.wide(width), height);
    }
  }

  private Room room() {
    return new Room(getWidth(), getHeight());
  }

  /**
   * Rows have all the height they like where all of them then fit one page, else what all their
   * lines need where those of the page have room.
   */
  private double height(Node row, double width) {
    return roomy
        ? row.prefHeight(width)
        : lined && row instanceof ListRow words ? words.whole(width) : row.minHeight(width);
  }

  @Override
  protected void layoutChildren() {
    roomy = !stretched && rows.fitAsLiked(getWidth(), getHeight());
    Room room = room();
    if (room.whole) {
      starts.subList(1, starts.size()).clear();
    } else if (rows.count() > 0) {
      starts.set(starts.size() - 1, rows.within(start()));
    }
    List<Pages.Piece> page = room.pages().page(start());
    List<Node> shown = new ArrayList<>();
    page.forEach(piece -> shown.add(rows.piece(piece, room.width)));
    List<Node> placed = new ArrayList<>(shown);
    if (!room.whole) {
      offerTurning(room.below, page);
      placed.add(turning);
    }
    if (!getChildren().equals(placed)) {
      getChildren().setAll(placed);
      placed.forEach(Node::applyCss);
    }
    place(shown, room.width, room.height);
    if (room.below) {
      Panes.place(turning, 0, room.height + gap, getWidth(), turning.rowHigh());
    } else if (!room.whole) {
      Panes.place(turning, room.width + gap, 0, turning.columnWide(), getHeight());
    }
  }

  private void offerTurning(boolean below, List<Pages.Piece> page) {
    turning.across(below);
    Pages.Piece last = page.get(page.size() - 1);
    int before = rows.things(start().item());
    int through = rows.things(last.at().item() + 1);
    String first = Integer.toString(before + 1);
    int all = rows.things(rows.count());
    boolean counts = through > before && all > 1;
    turning.offer(
        starts.size() > 1,
        last.after().item() < rows.count(),
        counts ? first + (through > before + 1 ? "–" + through : "") : "",
        counts ? "of " + all : "");
  }

  private void place(List<Node> shown, double width, double height) {
    int first = start().item();
    lined = true;
    lined = used(shown, width) <= height;
    double used = used(shown, width);
    double extra = stretched && !shown.isEmpty() ? (height - used) / shown.size() : 0;
    double down = 0;
    for (int at = 0; at < shown.size(); at++) {
      Node row = shown.get(at);
      double high = Math.floor(height(row, width) + Math.max(0, extra));
      Panes.place(row, 0, down, width, high);
      down += high + gapBelow(first + at);
    }
    Levelled.level(shown);
  }

  private double used(List<Node> shown, double width) {
    double used = 0;
    for (int at = 0; at < shown.size(); at++) {
      used += height(shown.get(at), width) + (at > 0 ? gapBelow(start().item() + at - 1) : 0);
    }
    return used;
  }

  private double gapBelow(int item) {
    return roomy ? gap : rows.gap(item);
  }
}
