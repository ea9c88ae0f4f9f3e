package wherefrom.print;

import wherefrom.pdf.Typeface;

/** Something drawn on paper, in millimetres from the top left; y grows downwards. */
sealed interface PaperMark {

  /**
   * What draws marks, one by one.
   *
   * @param <X> how it fails
   */
  interface Pen<X extends Exception> {
    void words(Words words) throws X;

    void symbol(Symbol symbol) throws X;

    void line(Line line) throws X;

    void black(Black black) throws X;

    void arrow(ArrowUp arrow) throws X;

    void circle(Circle circle) throws X;
  }

  /** Draws it. */
  <X extends Exception> void draw(Pen<X> pen) throws X;

  /** What it covers. */
  Box box();

  /**
   * A line of words.
   *
   * @param x the left end
   * @param baseline what the letters stand on
   * @param capMm height of the capitals
   * @param width of the words as set
   * @param white white on black instead of black on white
   */
  record Words(
      String text,
      boolean bold,
      double x,
      double baseline,
      double capMm,
      double width,
      boolean white)
      implements PaperMark {
    /**
     * What letters with an accent rise above capitals, and tails fall below, in capital heights.
     */
    private static final double RISE = 0.2;

    private static final double TAIL = 0.3;

    @Override
    public Box box() {
      double rise = Typeface.hasAccentedCapital(text) ? RISE * capMm : 0;
      double tail = Typeface.hasTail(text) ? TAIL * capMm : 0;
      return new Box(x, baseline - capMm - rise, width, capMm + rise + tail);
    }

    @Override
    public <X extends Exception> void draw(Pen<X> pen) throws X {
      pen.words(this);
    }
  }

  /** A symbol in its frame; the box has the exact size and is moved to whole dots when drawn. */
  record Symbol(Modules modules, Box box, int moduleDots, int dpi) implements PaperMark {
    @Override
    public <X extends Exception> void draw(Pen<X> pen) throws X {
      pen.symbol(this);
    }
  }

  /** A straight line. */
  record Line(double x1, double y1, double x2, double y2, double thickness) implements PaperMark {
    @Override
    public Box box() {
      double half = thickness / 2;
      return new Box(
          Math.min(x1, x2) - half,
          Math.min(y1, y2) - half,
          Math.abs(x2 - x1) + thickness,
          Math.abs(y2 - y1) + thickness);
    }

    @Override
    public <X extends Exception> void draw(Pen<X> pen) throws X {
      pen.line(this);
    }
  }

  /** A black area. */
  record Black(Box box) implements PaperMark {
    @Override
    public <X extends Exception> void draw(Pen<X> pen) throws X {
      pen.black(this);
    }
  }

  /** An arrow that points up. */
  record ArrowUp(Box box) implements PaperMark {
    @Override
    public <X extends Exception> void draw(Pen<X> pen) throws X {
      pen.arrow(this);
    }
  }

  /** A circle, not filled. */
  record Circle(Box box, double thickness) implements PaperMark {
    @Override
    public <X extends Exception> void draw(Pen<X> pen) throws X {
      pen.circle(this);
    }
  }
}
