package wherefrom.pdf;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import wherefrom.drawing.Asked;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.PartState;
import wherefrom.drawing.Shape;
import wherefrom.job.pages.RecordPicture;
import wherefrom.job.pages.RecordSection;
import wherefrom.parts.Place;
import wherefrom.workings.chart.Chart;

/**
 * One page. Lengths are in mm from its upper left corner, y runs down; a size of words is the
 * font's, a capital is three quarters of it.
 */
public final class PaperPage {
  private static final double MM = Book.POINTS;

  /** Which end of words stands at their place. */
  public enum Side {
    BEGIN,
    MIDDLE,
    END
  }

  private final PDDocument document;
  private final PDPage page;
  private final PageLetters regular;
  private final PageLetters bold;
  private final PDPageContentStream out;
  private boolean open = true;

  PaperPage(PDDocument document, PDPage page, PageLetters regular, PageLetters bold)
      throws IOException {
    this.document = document;
    this.page = page;
    this.regular = regular;
    this.bold = bold;
    this.out = new PDPageContentStream(document, page);
  }

  public double width() {
    return page.getMediaBox().getWidth() / MM;
  }

  public double height() {
    return page.getMediaBox().getHeight() / MM;
  }

  private float x(double mm) {
    return (float) (mm * MM);
  }

  private float y(double mm) {
    return (float) (page.getMediaBox().getHeight() - mm * MM);
  }

  private PageLetters letters(boolean inBold) {
    return inBold ? bold : regular;
  }

  /** How wide words run. */
  public double widthOf(String text, double size, boolean inBold) {
    PageLetters letters = letters(inBold);
    return letters.width(letters.clean(text), size);
  }

  /** Lines of at most this width; a word that is too long is broken. */
  public List<String> wrap(String text, double size, boolean inBold, double wide) {
    return letters(inBold).wrap(text, size, wide);
  }

  /** The words, or as many as fit with an ellipsis. */
  public String shorten(String text, double size, boolean inBold, double wide) {
    return letters(inBold).shorten(text, size, wide);
  }

  /** The widths of a table's columns, each with the gap behind it; together they fill the width. */
  public double[] columns(RecordSection section, double size, double gap, double wide) {
    double[] points = new ColumnWidths(regular, bold, size * MM, gap * MM).of(section, wide * MM);
    return Arrays.stream(points).map(PaperPage::mm).toArray();
  }

  /** Words on one line; y is their foot. */
  public void words(
      double x, double y, String text, double size, boolean inBold, Side side, Ink ink)
      throws IOException {
    PageLetters letters = letters(inBold);
    String clean = letters.clean(text);
    double wide = letters.width(clean, size);
    double begin = side == Side.BEGIN ? x : x - (side == Side.END ? wide : wide / 2);
    out.setNonStrokingColor(ink.color());
    out.beginText();
    out.newLineAtOffset(x(begin), y(y));
    letters.show(out, clean, size * MM);
    out.endText();
  }

  /** Words from the left, in black. */
  public void words(double x, double y, String text, double size, boolean inBold)
      throws IOException {
    words(x, y, text, size, inBold, Side.BEGIN, Ink.BLACK);
  }

  public void line(double x1, double y1, double x2, double y2, double wide, Ink ink)
      throws IOException {
    pen(wide, ink);
    out.moveTo(x(x1), y(y1));
    out.lineTo(x(x2), y(y2));
    out.stroke();
  }

  /** A dashed line; dash and gap in mm. */
  public void dashes(
      double x1, double y1, double x2, double y2, double wide, Ink ink, double dash, double gap)
      throws IOException {
    out.setLineDashPattern(new float[] {x(dash), x(gap)}, 0);
    line(x1, y1, x2, y2, wide, ink);
    out.setLineDashPattern(new float[] {}, 0);
  }

  private void pen(double wide, Ink ink) throws IOException {
    out.setLineWidth(x(wide));
    out.setStrokingColor(ink.color());
  }

  public void fill(double x, double y, double wide, double high, Ink ink) throws IOException {
    out.setNonStrokingColor(ink.color());
    out.addRect(x(x), y(y + high), x(wide), x(high));
    out.fill();
  }

  /** A rectangle's outline. */
  public void box(double x, double y, double wide, double high, double line, Ink ink)
      throws IOException {
    pen(line, ink);
    out.addRect(x(x), y(y + high), x(wide), x(high));
    out.stroke();
  }

  /** A rectangle's outline in dashes, white inside. */
  public void dashedBox(double x, double y, double wide, double high, double line)
      throws IOException {
    fill(x, y, wide, high, Ink.WHITE);
    out.setLineDashPattern(new float[] {x(0.7), x(0.5)}, 0);
    box(x, y, wide, high, line, Ink.BLACK);
    out.setLineDashPattern(new float[] {}, 0);
  }

  /**
   * A tag, white inside: its left corners are cut.
   *
   * @param line width of its frame, inside the box
   */
  public void tag(double x, double y, double wide, double high, double cut, double line)
      throws IOException {
    double half = line / 2;
    double left = x + half;
    double right = x + wide - half;
    double top = y + half;
    double foot = y + high - half;
    pen(line, Ink.BLACK);
    out.setLineJoinStyle(0);
    out.setNonStrokingColor(Ink.WHITE.color());
    out.moveTo(x(left + cut), y(top));
    out.lineTo(x(right), y(top));
    out.lineTo(x(right), y(foot));
    out.lineTo(x(left + cut), y(foot));
    out.lineTo(x(left), y(foot - cut));
    out.lineTo(x(left), y(top + cut));
    out.closeAndFillAndStroke();
  }

  /** A disc. */
  public void dot(double x, double y, double radius, Ink ink) throws IOException {
    out.setNonStrokingColor(ink.color());
    circle(x, y, radius);
    out.fill();
  }

  /** The dashed ring where a hole is punched. */
  public void punch(double x, double y, double radius) throws IOException {
    pen(0.2, Ink.GREY);
    out.setLineDashPattern(new float[] {x(0.8), x(0.6)}, 0);
    circle(x, y, radius);
    out.stroke();
    out.setLineDashPattern(new float[] {}, 0);
  }

  private void circle(double x, double y, double r) throws IOException {
    double k = 0.5522847498 * r;
    out.moveTo(x(x + r), y(y));
    out.curveTo(x(x + r), y(y + k), x(x + k), y(y + r), x(x), y(y + r));
    out.curveTo(x(x - k), y(y + r), x(x - r), y(y + k), x(x - r), y(y));
    out.curveTo(x(x - r), y(y - k), x(x - k), y(y - r), x(x), y(y - r));
    out.curveTo(x(x + k), y(y - r), x(x + r), y(y - k), x(x + r), y(y));
    out.closePath();
  }

  /** A wire from left to right. */
  public void wire(double x1, double x2, double y) throws IOException {
    line(x1, y, x2, y, 1, Ink.BLACK);
    dashes(x1, y, x2, y, 0.34, Ink.BAND, 0.7, 0.5);
  }

  /** A box for a drawing, in the drawing's unit. */
  public static Bounds room(double x, double y, double wide, double high) {
    return new Bounds(x * MM, y * MM, wide * MM, high * MM);
  }

  /** A length of a drawing in mm. */
  public static double mm(double points) {
    return points / MM;
  }

  /**
   * A drawing.
   *
   * @param drawing made for {@link Book#GLASS} in a {@link #room}
   * @param marks whether states bear their marks
   */
  public void drawing(
      Drawing drawing, Asked asked, Function<Place, PartState> states, boolean marks)
      throws IOException {
    pencil().draw(drawing, asked, states, marks);
  }

  /** Shapes made for {@link Book#GLASS}; those of a part as in this look. */
  public void shapes(List<Shape> shapes, DrawnAs look) throws IOException {
    pencil().draw(shapes, look);
  }

  private PdfDrawing pencil() {
    return new PdfDrawing(out, regular, bold, 0, page.getMediaBox().getHeight());
  }

  /** A plot in a box. */
  public void chart(Chart chart, double x, double y, double wide, double high) throws IOException {
    out.setStrokingColor(Ink.BLACK.color());
    out.setNonStrokingColor(Ink.BLACK.color());
    new ChartDrawing(out, regular, x(x), y(y)).draw(chart, wide * MM, high * MM);
  }

  /**
   * A photograph as large as it fits into a box, in its middle.
   *
   * @return whether it is there; not where its file is missing or holds no picture
   */
  public boolean picture(RecordPicture picture, double x, double y, double w, double h)
      throws IOException {
    Optional<PDImageXObject> image = Stills.read(document, picture);
    if (image.isEmpty()) {
      return false;
    }
    double scale = Math.min(w / image.get().getWidth(), h / image.get().getHeight());
    double wide = image.get().getWidth() * scale;
    double high = image.get().getHeight() * scale;
    double left = x + (w - wide) / 2;
    out.drawImage(image.get(), x(left), y(y + (h + high) / 2), x(wide), x(high));
    return true;
  }

  void close() throws IOException {
    if (open) {
      open = false;
      out.close();
    }
  }
}
