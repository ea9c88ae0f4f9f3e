package wherefrom.drawing;

/** One piece of an outline. */
public sealed interface PathStep {

  /**
   * What draws the pieces of outlines, one by one.
   *
   * @param <X> how it fails
   */
  interface Pen<X extends Exception> {
    void move(Move move) throws X;

    void line(Line line) throws X;

    void curve(Curve curve) throws X;

    void close(Close close) throws X;
  }

  /** Draws it. */
  <X extends Exception> void draw(Pen<X> pen) throws X;

  /** Begins at a point. */
  record Move(double x, double y) implements PathStep {
    @Override
    public <X extends Exception> void draw(Pen<X> pen) throws X {
      pen.move(this);
    }
  }

  /** A straight line to a point. */
  record Line(double x, double y) implements PathStep {
    @Override
    public <X extends Exception> void draw(Pen<X> pen) throws X {
      pen.line(this);
    }
  }

  /** A cubic Bezier curve to (x, y) with two handles. */
  record Curve(double x1, double y1, double x2, double y2, double x, double y) implements PathStep {
    @Override
    public <X extends Exception> void draw(Pen<X> pen) throws X {
      pen.curve(this);
    }
  }

  /** Back to where it began. */
  record Close() implements PathStep {
    @Override
    public <X extends Exception> void draw(Pen<X> pen) throws X {
      pen.close(this);
    }
  }
}
