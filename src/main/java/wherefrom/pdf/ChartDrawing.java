package wherefrom.pdf;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import wherefrom.workings.chart.Chart;
import wherefrom.workings.chart.ChartLayout;
import wherefrom.workings.chart.ChartMark;
import wherefrom.workings.chart.Surface;

/** Draws a chart as lines, areas and words of the page: black and one grey, sharp at any size. */
final class ChartDrawing implements ChartMark.Pen<IOException> {
  private static final double TEXT = 8;

  /** The height of a capital of the print font, in its size. */
  private static final double CAPITAL = 0.725;

  private static final float GREY = 0.82f;
  private static final float THIN = 0.6f;
  private static final float THICK = 1.8f;
  private static final double DOT = 2.6;

  /** Where the control points of a quarter circle lie, as a part of the radius. */
  private static final double ROUND = 0.5523;

  private final PDPageContentStream out;
  private final PageLetters letters;
  private final double left;
  private final double top;

  /**
   * @param left of the drawing, in points
   * @param top of the drawing, in points from the foot of the page
   */
  ChartDrawing(PDPageContentStream out, PageLetters letters, double left, double top) {
    this.out = out;
    this.letters = letters;
    this.left = left;
    this.top = top;
  }

  void draw(Chart chart, double width, double height) throws IOException {
    Surface surface = new Surface(width, height, TEXT * CAPITAL, this::widthOf);
    for (ChartMark mark : ChartLayout.of(chart, surface)) {
      mark.draw(this);
    }
  }

  private double widthOf(String words) {
    return letters.width(letters.clean(words), TEXT);
  }

  private float x(double across) {
    return (float) (left + across);
  }

  private float y(double down) {
    return (float) (top - down);
  }

  @Override
  public void line(ChartMark.Line line) throws IOException {
    boolean thin = line.look() == ChartMark.Look.THIN || line.look() == ChartMark.Look.DOTTED;
    out.setLineWidth(thin ? THIN : THICK);
    out.setLineDashPattern(
        switch (line.look()) {
          case DASHED -> new float[] {6, 4};
          case DOTTED -> new float[] {2, 2};
          case THIN, THICK -> new float[] {};
        },
        0);
    out.moveTo(x(line.x1()), y(line.y1()));
    out.lineTo(x(line.x2()), y(line.y2()));
    out.stroke();
    out.setLineDashPattern(new float[] {}, 0);
  }

  @Override
  public void area(ChartMark.Area area) throws IOException {
    boolean first = true;
    for (ChartMark.Corner corner : area.corners()) {
      if (first) {
        out.moveTo(x(corner.x()), y(corner.y()));
      } else {
        out.lineTo(x(corner.x()), y(corner.y()));
      }
      first = false;
    }
    out.closePath();
    out.setNonStrokingColor(GREY);
    out.fill();
    out.setNonStrokingColor(0f);
  }

  @Override
  public void dot(ChartMark.Dot dot) throws IOException {
    if (dot.odd()) {
      float half = (float) (1.6 * DOT);
      out.addRect(x(dot.x()) - half, y(dot.y()) - half, 2 * half, 2 * half);
    } else {
      circle(x(dot.x()), y(dot.y()));
    }
    out.fill();
  }

  private void circle(float x, float y) throws IOException {
    float r = (float) DOT;
    float c = (float) (ROUND * DOT);
    out.moveTo(x + r, y);
    out.curveTo(x + r, y + c, x + c, y + r, x, y + r);
    out.curveTo(x - c, y + r, x - r, y + c, x - r, y);
    out.curveTo(x - r, y - c, x - c, y - r, x, y - r);
    out.curveTo(x + c, y - r, x + r, y - c, x + r, y);
    out.closePath();
  }

  @Override
  public void words(ChartMark.Words words) throws IOException {
    double width = widthOf(words.text());
    double begin =
        switch (words.side()) {
          case BEGIN -> words.x();
          case MIDDLE -> words.x() - width / 2;
          case END -> words.x() - width;
        };
    out.beginText();
    out.newLineAtOffset(x(begin), y(words.y() + TEXT * CAPITAL / 2));
    letters.show(out, letters.clean(words.text()), TEXT);
    out.endText();
  }
}
