package wherefrom.ui.controls;

import java.util.ArrayList;
import java.util.List;

/**
 * What stands on each page of a list: whole rows as far as they have room, then the first lines of
 * the next one where its words may go on on the page after.
 */
final class Pages {
  /** So many lines of a text at least stand on either side of a page's end. */
  private static final int LINES_TOGETHER = 2;

  /** A text that fits one page whole is not begun on the last of another: this part of a page. */
  private static final double LAST_OF_A_PAGE = 1 / 4.0;

  /**
   * Where a page begins.
   *
   * @param item the number of the row, from 0
   * @param from so many letters of its words stand on pages before
   */
  record Place(int item, int from) {
    static final Place FIRST = new Place(0, 0);

    boolean isBefore(Place other) {
      return item < other.item || (item == other.item && from < other.from);
    }
  }

  /**
   * A row on a page, or what of it stands there.
   *
   * @param to the number of the first letter that stands on the next page; {@link #END} if none
   */
  record Piece(Place at, int to) {
    static final int END = Integer.MAX_VALUE;

    static Piece rest(Place at) {
      return new Piece(at, END);
    }

    boolean isWhole() {
      return at.from() == 0 && to == END;
    }

    /** Where what follows begins. */
    Place after() {
      return to == END ? new Place(at.item() + 1, 0) : new Place(at.item(), to);
    }
  }

  /** Rows of which pages are made, in the width that they have there. */
  interface Rows {
    int count();

    /** The gap between a row and the next, in pixels. */
    double gap(int item);

    /** The least height of a piece, in pixels. */
    double height(Piece piece);

    /**
     * Where a page may end within the words of a row, in their order; nowhere in one that is
     * pressed or shows what is no text.
     *
     * @param least so many lines of a text at least stand on either side; with one, a heading too
     *     may stand without its words
     */
    List<Integer> ends(Place at, int least);
  }

  private final Rows rows;
  private final double height;

  /**
   * @param height of a page, in pixels
   */
  Pages(Rows rows, double height) {
    this.rows = rows;
    this.height = height;
  }

  /** What stands on the page that begins there: at least one piece, if there is any more. */
  List<Piece> page(Place start) {
    List<Piece> page = new ArrayList<>();
    double free = height;
    Place at = start;
    while (at.item() < rows.count()) {
      Piece rest = Piece.rest(at);
      double whole = rows.height(rest);
      boolean fits = whole <= free;
      Piece next = fits ? rest : page.isEmpty() ? first(at) : begun(at, whole, free);
      if (!at.isBefore(next.after())) {
        break;
      }
      page.add(next);
      if (!fits) {
        break;
      }
      free -= whole + rows.gap(at.item());
      at = next.after();
    }
    return page;
  }

  /** What has room of a text that is too long for a page; all of a row that does not part. */
  private Piece first(Place at) {
    Piece begun = through(at, LINES_TOGETHER, height);
    Piece forced = begun.to() > at.from() ? begun : through(at, 1, height);
    return forced.to() > at.from() ? forced : Piece.rest(at);
  }

  /** What stands of a row in the room that is left below others; an empty piece if nothing. */
  private Piece begun(Place at, double whole, double free) {
    boolean rather = whole <= height && free < height * LAST_OF_A_PAGE;
    return rather ? new Piece(at, at.from()) : through(at, LINES_TOGETHER, free);
  }

  /** As much as has room; an empty piece if nothing. */
  private Piece through(Place at, int least, double free) {
    List<Integer> ends = rows.ends(at, least);
    int low = 0;
    int high = ends.size();
    while (low < high) {
      int middle = (low + high) / 2;
      if (rows.height(new Piece(at, ends.get(middle))) <= free) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return new Piece(at, low == 0 ? at.from() : ends.get(low - 1));
  }

  /** Where the page after this one begins; behind the last row if there is none. */
  Place after(Place start) {
    List<Piece> page = page(start);
    return page.isEmpty() ? start : page.get(page.size() - 1).after();
  }

  /** How many pages there are. */
  int count() {
    int pages = 0;
    Place at = Place.FIRST;
    while (at.item() < rows.count()) {
      at = after(at);
      pages++;
    }
    return pages;
  }
}
