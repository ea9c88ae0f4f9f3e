package wherefrom.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import wherefrom.drawing.Anchor;
import wherefrom.drawing.Asked;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.CarriersAsTheyAre;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.Glass;
import wherefrom.drawing.MarkPlan;
import wherefrom.drawing.PartFigure;
import wherefrom.drawing.PartState;
import wherefrom.drawing.PathStep;
import wherefrom.drawing.PlacedMark;
import wherefrom.drawing.Shape;
import wherefrom.parts.Place;

/**
 * Draws an engine's drawing on a page as lines and areas, sharp at any size. Fills are light greys
 * and a light blue, so that a printer with black alone loses nothing that outlines do not say.
 */
final class PdfDrawing {
  /** What the drawing must be made for: its unit is the point. */
  static final Glass GLASS = Glass.paper(72 / 25.4);

  private static final double CAPITAL = 0.75;

  /** Where the handles of a quarter circle lie, as a part of the radius. */
  private static final double ROUND = 0.5522847498;

  private static final List<Double> OUT_DASHES = List.of(3.0, 2.5);

  private final PDPageContentStream out;
  private final PageLetters regular;
  private final PageLetters bold;
  private final double left;
  private final double top;
  private final Path path = new Path();

  /**
   * @param left of the drawing's origin, in points
   * @param top of the drawing's origin, in points from the foot of the page
   */
  PdfDrawing(
      PDPageContentStream out, PageLetters regular, PageLetters bold, double left, double top) {
    this.out = out;
    this.regular = regular;
    this.bold = bold;
    this.left = left;
    this.top = top;
  }

  /**
   * Draws it.
   *
   * @param drawing made for {@link #GLASS}
   * @param marks whether states bear their marks
   */
  void draw(Drawing drawing, Asked asked, Function<Place, PartState> states, boolean marks)
      throws IOException {
    out.saveGraphicsState();
    out.setLineJoinStyle(1);
    CarriersAsTheyAre castings =
        CarriersAsTheyAre.of(drawing, CarriersAsTheyAre.off(drawing, states));
    for (Shape shape : castings.ground()) {
      draw(shape, DrawnAs.IN);
    }
    for (Shape shape : castings.outlines()) {
      draw(shape, DrawnAs.OUT);
    }
    for (PartFigure figure : drawing.parts()) {
      Place place = figure.place();
      DrawnAs look = asked.look(place, states);
      for (Shape shape : figure.shapes()) {
        draw(shape, look);
      }
    }
    for (Shape shape : drawing.words()) {
      draw(shape, DrawnAs.IN);
    }
    if (marks) {
      marks(drawing, asked, states);
      for (Shape shape : castings.marks()) {
        draw(shape, DrawnAs.IN);
      }
    }
    out.restoreGraphicsState();
  }

  /** Draws shapes; those of a part as in this look. */
  void draw(List<Shape> shapes, DrawnAs look) throws IOException {
    out.saveGraphicsState();
    out.setLineJoinStyle(1);
    for (Shape shape : shapes) {
      draw(shape, look);
    }
    out.restoreGraphicsState();
  }

  private void marks(Drawing drawing, Asked asked, Function<Place, PartState> states)
      throws IOException {
    for (Anchor anchor : drawing.anchors()) {
      for (PlacedMark mark : MarkPlan.of(anchor, asked, states, Set.of(), drawing.glass())) {
        for (Shape shape : mark.shapes()) {
          draw(shape, DrawnAs.IN);
        }
      }
    }
  }

  private void draw(Shape shape, DrawnAs look) throws IOException {
    if (shape.role().isOfPart() && !look.shows(shape.role())) {
      return;
    }
    PrintInk ink = PrintInk.of(shape.role(), look);
    if (shape instanceof Shape.Words words) {
      words(words, ink);
      return;
    }
    boolean part = shape.role().isOfPart();
    double width = shape.width() * (part ? look.weight() : 1);
    boolean stroked = ink.hasLine() && width > 0;
    if (!ink.hasFill() && !stroked) {
      return;
    }
    if (stroked) {
      pen(width, part && look == DrawnAs.OUT ? OUT_DASHES : shape.role().dashes(), ink);
    }
    shape.draw(path);
    paint(ink, stroked);
  }

  private void pen(double width, List<Double> dashes, PrintInk ink) throws IOException {
    float[] pattern = new float[dashes.size()];
    for (int at = 0; at < pattern.length; at++) {
      pattern[at] = (float) (dashes.get(at) * width);
    }
    out.setLineWidth((float) width);
    out.setLineDashPattern(pattern, 0);
    out.setStrokingColor(ink.line());
  }

  private void paint(PrintInk ink, boolean stroked) throws IOException {
    if (!ink.hasFill()) {
      out.stroke();
      return;
    }
    out.setNonStrokingColor(ink.fill());
    if (stroked) {
      out.fillAndStroke();
    } else {
      out.fill();
    }
  }

  private float x(double across) {
    return (float) (left + across);
  }

  private float y(double down) {
    return (float) (top - down);
  }

  /** Lays the outline of a shape, to be stroked or filled. */
  private final class Path implements Shape.Pen<IOException>, PathStep.Pen<IOException> {
    @Override
    public void outline(Shape.Outline outline) throws IOException {
      for (PathStep step : outline.steps()) {
        step.draw(this);
      }
    }

    @Override
    public void disc(Shape.Disc disc) throws IOException {
      double r = disc.radius();
      rounded(disc.x() - r, disc.y() - r, 2 * r, 2 * r, r);
    }

    @Override
    public void slab(Shape.Slab slab) throws IOException {
      Bounds box = slab.bounds();
      double r = Math.min(slab.radius(), Math.min(box.width(), box.height()) / 2);
      rounded(box.x(), box.y(), box.width(), box.height(), r);
    }

    /** Words have none. */
    @Override
    public void words(Shape.Words words) {}

    @Override
    public void move(PathStep.Move move) throws IOException {
      out.moveTo(x(move.x()), y(move.y()));
    }

    @Override
    public void line(PathStep.Line line) throws IOException {
      out.lineTo(x(line.x()), y(line.y()));
    }

    @Override
    public void curve(PathStep.Curve curve) throws IOException {
      out.curveTo(
          x(curve.x1()), y(curve.y1()), x(curve.x2()), y(curve.y2()), x(curve.x()), y(curve.y()));
    }

    @Override
    public void close(PathStep.Close close) throws IOException {
      out.closePath();
    }
  }

  /** A rectangle with round corners; a circle where the radius is half of both sides. */
  private void rounded(double x, double y, double w, double h, double r) throws IOException {
    if (r <= 0) {
      out.addRect(x(x), y(y + h), (float) w, (float) h);
      return;
    }
    double k = r - ROUND * r;
    double right = x + w;
    double foot = y + h;
    out.moveTo(x(x + r), y(y));
    out.lineTo(x(right - r), y(y));
    out.curveTo(x(right - k), y(y), x(right), y(y + k), x(right), y(y + r));
    out.lineTo(x(right), y(foot - r));
    out.curveTo(x(right), y(foot - k), x(right - k), y(foot), x(right - r), y(foot));
    out.lineTo(x(x + r), y(foot));
    out.curveTo(x(x + k), y(foot), x(x), y(foot - k), x(x), y(foot - r));
    out.lineTo(x(x), y(y + r));
    out.curveTo(x(x), y(y + k), x(x + k), y(y), x(x + r), y(y));
    out.closePath();
  }

  private void words(Shape.Words words, PrintInk ink) throws IOException {
    PageLetters letters = words.bold() ? bold : regular;
    String clean = letters.clean(words.text());
    double wide = letters.width(clean, words.size());
    double begin =
        switch (words.side()) {
          case BEGIN -> words.x();
          case MIDDLE -> words.x() - wide / 2;
          case END -> words.x() - wide;
        };
    out.setNonStrokingColor(ink.fill());
    out.beginText();
    out.newLineAtOffset(x(begin), y(words.y() + words.size() * CAPITAL / 2));
    letters.show(out, clean, words.size());
    out.endText();
  }
}
