package wherefrom.workings.chart;

import java.util.List;

/** Something to draw. Lengths are in the surface's unit, from its upper left corner. */
public sealed interface ChartMark {

  /**
   * What draws marks, one by one.
   *
   * @param <X> how it fails
   */
  interface Pen<X extends Exception> {
    void line(Line line) throws X;

    void area(Area area) throws X;

    void dot(Dot dot) throws X;

    void words(Words words) throws X;
  }

  /** Draws it. */
  <X extends Exception> void draw(Pen<X> pen) throws X;

  /** A straight line. */
  record Line(double x1, double y1, double x2, double y2, Look look) implements ChartMark {
    @Override
    public <X extends Exception> void draw(Pen<X> pen) throws X {
      pen.line(this);
    }
  }

  /** A filled area; corners are pairs of across and down. */
  record Area(List<Corner> corners) implements ChartMark {
    public Area {
      corners = List.copyOf(corners);
    }

    @Override
    public <X extends Exception> void draw(Pen<X> pen) throws X {
      pen.area(this);
    }
  }

  /** A corner of an area. */
  record Corner(double x, double y) {}

  /** A dot that stands for a value; a square where it stands out. */
  record Dot(double x, double y, boolean odd) implements ChartMark {
    @Override
    public <X extends Exception> void draw(Pen<X> pen) throws X {
      pen.dot(this);
    }
  }

  /** Words; the place is that of their middle, begin or end at half the height of a capital. */
  record Words(double x, double y, Side side, String text) implements ChartMark {
    @Override
    public <X extends Exception> void draw(Pen<X> pen) throws X {
      pen.words(this);
    }
  }

  /** How a line looks. */
  enum Look {
    /** The frame and the figures' marks. */
    THIN,
    /** A curve or a limit. */
    THICK,
    /** The second curve. */
    DASHED,
    /** A level across the plot. */
    DOTTED
  }

  /** Which end of the words stands at their place. */
  enum Side {
    BEGIN,
    MIDDLE,
    END
  }
}
