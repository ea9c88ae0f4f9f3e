package wherefrom.report;

import java.awt.Shape;
import java.awt.geom.CubicCurve2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** The lines of a page as the PDF holds them, in points from its lower left corner. */
final class Strokes extends PDFGraphicsStreamEngine {
  private final List<Line2D> straight = new ArrayList<>();
  private final List<CubicCurve2D> bent = new ArrayList<>();
  private Point2D at = new Point2D.Double();
  private Point2D begun = at;

  private Strokes(PDPage page) throws IOException {
    super(page);
    processPage(page);
  }

  static Strokes of(Path pdf, int page) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new Strokes(document.getPage(page - 1));
    }
  }

  /** The straight ones. */
  List<Line2D> straight() {
    return straight;
  }

  /** From the leftmost to the rightmost point of any line between two heights. */
  double wide(double from, double to) {
    Rectangle2D all = null;
    List<Shape> lines = new ArrayList<>(straight);
    lines.addAll(bent);
    for (Shape line : lines) {
      Rectangle2D bounds = new Path2D.Double(line).getBounds2D();
      if (bounds.getMinY() >= from && bounds.getMaxY() <= to) {
        all = all == null ? bounds : all.createUnion(bounds);
      }
    }
    return all == null ? 0 : all.getWidth();
  }

  @Override
  public void moveTo(float x, float y) {
    at = new Point2D.Double(x, y);
    begun = at;
  }

  @Override
  public void lineTo(float x, float y) {
    Point2D to = new Point2D.Double(x, y);
    straight.add(new Line2D.Double(at, to));
    at = to;
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    bent.add(new CubicCurve2D.Double(at.getX(), at.getY(), x1, y1, x2, y2, x3, y3));
    at = new Point2D.Double(x3, y3);
  }

  @Override
  public Point2D getCurrentPoint() {
    return at;
  }

  @Override
  public void closePath() {
    straight.add(new Line2D.Double(at, begun));
    at = begun;
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    straight.add(new Line2D.Double(p0, p1));
    straight.add(new Line2D.Double(p1, p2));
    straight.add(new Line2D.Double(p2, p3));
    straight.add(new Line2D.Double(p3, p0));
  }

  @Override
  public void drawImage(PDImage image) {}

  @Override
  public void clip(int rule) {}

  @Override
  public void endPath() {}

  @Override
  public void strokePath() {}

  @Override
  public void fillPath(int rule) {}

  @Override
  public void fillAndStrokePath(int rule) {}

  @Override
  public void shadingFill(COSName name) {}
}
