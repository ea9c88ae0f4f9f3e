package wherefrom.ui.controls;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javafx.scene.layout.Region;

/** The rows of a list, made when they are first asked for, and the pieces of those that part. */
final class PagerRows<T> {
  /** The rows that come first stand for all: a list may be far too long to make them all. */
  private static final int MEASURED = 24;

  /** A page holds at least a heading and about three lines of words. */
  private static final int LEAST_END = 1;

  /** So many lines of a text stand together where it is measured how low a list may be. */
  private static final int TOGETHER = 2;

  private final Function<T, ? extends Region> maker;
  private final List<T> items;
  private final double gap;
  private final List<Region> made = new ArrayList<>();
  private final Map<Pages.Piece, Region> pieces = new HashMap<>();
  private double piecesWide;

  /**
   * @param gap between keys, in pixels; rows that are read have a line between them
   */
  PagerRows(Function<T, ? extends Region> maker, List<? extends T> items, double gap) {
    this.maker = maker;
    this.gap = gap;
    this.items = List.copyOf(items);
  }

  int count() {
    return items.size();
  }

  /** How many things the first rows hold. */
  int things(int rows) {
    return PagerCount.of(items.subList(0, rows));
  }

  private Region row(int at) {
    while (made.size() <= at) {
      made.add(maker.apply(items.get(made.size())));
    }
    return made.get(at);
  }

  private List<Region> first() {
    int measured = Math.min(items.size(), MEASURED);
    if (measured > 0) {
      row(measured - 1);
    }
    return made.subList(0, measured);
  }

  private double most(ToDoubleFunction<Region> measure) {
    return first().stream().mapToDouble(measure).max().orElse(0);
  }

  /** The width that no row can do without. */
  double widest() {
    return most(row -> row.minWidth(-1));
  }

  /** What the row needs that needs most; of words that go on their first lines. */
  double tallest(double width) {
    return most(row -> row instanceof Parted words ? least(row, words, width) : least(row, width));
  }

  private static double least(Region row, double width) {
    return row.minHeight(width);
  }

  private static double least(Region row, Parted words, double width) {
    List<Integer> ends = width <= 0 ? List.of() : words.ends(0, width, TOGETHER);
    return ends.isEmpty()
        ? row.minHeight(width)
        : words.piece(0, ends.get(Math.min(LEAST_END, ends.size() - 1)), width).minHeight(width);
  }

  /** The height that the rows like that come first, with gaps between them. */
  double liked(double width) {
    return Math.max(
        0, first().stream().mapToDouble(row -> row.prefHeight(width) + gap).sum() - gap);
  }

  /** Whether all rows have the height they like. */
  boolean fitAsLiked(double width, double height) {
    return items.size() <= MEASURED && liked(width) <= height;
  }

  /** Whether all rows together have room. */
  boolean fit(double width, double height) {
    double free = height;
    for (int at = 0; at < items.size() && free >= 0; at++) {
      free -= row(at).minHeight(width) + (at > 0 ? gap(at - 1) : 0);
    }
    return free >= 0;
  }

  /** The gap between a row and the next. */
  double gap(int item) {
    return isRead(item) && item + 1 < items.size() && isRead(item + 1) ? 0 : gap;
  }

  private boolean isRead(int item) {
    return row(item) instanceof Parted words && words.letters() > 0;
  }

  /** Where a page may still begin: not behind the last row, nor behind the last of its words. */
  Pages.Place within(Pages.Place place) {
    boolean parts =
        place.from() > 0
            && row(place.item()) instanceof Parted words
            && place.from() < words.letters();
    return parts ? place : new Pages.Place(place.item(), 0);
  }

  /** What of a row stands on a page so wide. */
  Region piece(Pages.Piece piece, double width) {
    Region row = row(piece.at().item());
    if (piece.isWhole() || !(row instanceof Parted words)) {
      return row;
    }
    if (piecesWide != width) {
      pieces.clear();
      piecesWide = width;
    }
    int to = Math.min(piece.to(), words.letters());
    return pieces.computeIfAbsent(piece, any -> words.piece(piece.at().from(), to, width));
  }

  /** The rows in a width, of which pages are made. */
  Pages.Rows wide(double width) {
    return new Wide(width, items.size());
  }

  /** The same of the rows that come first. */
  Pages.Rows firstWide(double width) {
    return new Wide(width, Math.min(items.size(), MEASURED));
  }

  private final class Wide implements Pages.Rows {
    private final double width;
    private final int count;

    Wide(double width, int count) {
      this.width = width;
      this.count = count;
    }

    @Override
    public int count() {
      return count;
    }

    @Override
    public double gap(int item) {
      return PagerRows.this.gap(item);
    }

    @Override
    public double height(Pages.Piece piece) {
      return piece(piece, width).minHeight(width);
    }

    @Override
    public List<Integer> ends(Pages.Place at, int least) {
      return row(at.item()) instanceof Parted words
          ? words.ends(at.from(), width, least)
          : List.of();
    }
  }
}
