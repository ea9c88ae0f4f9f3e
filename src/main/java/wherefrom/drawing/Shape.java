package wherefrom.drawing;

import java.util.List;

/**
 * Something to draw. Lengths are in the drawing's unit. The line's width of a part's shapes is that
 * of a part that is in the engine; {@link DrawnAs} says by how much it differs else.
 */
public sealed interface Shape {

  /**
   * What draws shapes, one by one.
   *
   * @param <X> how it fails
   */
  interface Pen<X extends Exception> {
    void outline(Outline outline) throws X;

    void disc(Disc disc) throws X;

    void slab(Slab slab) throws X;

    void words(Words words) throws X;
  }

  /** Draws it. */
  <X extends Exception> void draw(Pen<X> pen) throws X;

  /** What it stands for, and by that how it looks. */
  Role role();

  /** Width of its line; 0 where it has none. */
  double width();

  /** The box round it, without the line's own width; of words only a guess. */
  Bounds bounds();

  /** An outline of lines and curves. */
  record Outline(List<PathStep> steps, Role role, double width) implements Shape {
    public Outline {
      steps = List.copyOf(steps);
    }

    @Override
    public Bounds bounds() {
      return Extent.of(steps);
    }

    @Override
    public <X extends Exception> void draw(Pen<X> pen) throws X {
      pen.outline(this);
    }
  }

  /** A circle. */
  record Disc(double x, double y, double radius, Role role, double width) implements Shape {
    @Override
    public Bounds bounds() {
      return new Bounds(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    @Override
    public <X extends Exception> void draw(Pen<X> pen) throws X {
      pen.disc(this);
    }
  }

  /** An upright rectangle, its corners rounded by a radius. */
  record Slab(Bounds bounds, double radius, Role role, double width) implements Shape {
    @Override
    public <X extends Exception> void draw(Pen<X> pen) throws X {
      pen.slab(this);
    }
  }

  /**
   * Words.
   *
   * @param x where they begin, end or have their middle, as {@code side} says
   * @param y half the height of a capital
   * @param size of the font; a capital is three quarters of it
   */
  record Words(double x, double y, String text, double size, boolean bold, Side side, Role role)
      implements Shape {
    @Override
    public double width() {
      return 0;
    }

    @Override
    public Bounds bounds() {
      double wide = Letters.width(text, size, bold);
      double left =
          switch (side) {
            case BEGIN -> x;
            case MIDDLE -> x - wide / 2;
            case END -> x - wide;
          };
      double capital = Letters.CAPITAL * size;
      return new Bounds(left, y - capital / 2, wide, capital);
    }

    @Override
    public <X extends Exception> void draw(Pen<X> pen) throws X {
      pen.words(this);
    }
  }

  /** Which end of the words stands at their place. */
  enum Side {
    BEGIN,
    MIDDLE,
    END
  }
}
