package wherefrom.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.drawing.Asked;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.EngineAbove;
import wherefrom.drawing.EngineBelow;
import wherefrom.drawing.EngineGeometry;
import wherefrom.drawing.Glass;
import wherefrom.drawing.PartFigure;
import wherefrom.drawing.PathStep;
import wherefrom.drawing.Point;
import wherefrom.drawing.Shape;
import wherefrom.drawing.View;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.files.Outgoing;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.RecordEngine;
import wherefrom.parts.PartKind;
import wherefrom.pdf.Book;

/**
 * The engine on paper is the engine on the glass: every point of every part of the window's drawing
 * is found in the file, moved and made smaller by one factor.
 */
class DrawingOnPaperTest {
  private static final double TABLET = 5.9;

  /** How far two points may lie apart: the file's numbers are rounded. */
  private static final double NEAR = 0.02;

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "v8-odd-even, ABOVE",
    "v8-odd-even, BELOW",
    "opposed-4, ABOVE",
    "opposed-4, BELOW",
    "inline-6, ABOVE",
    "inline-6, BELOW",
    "v6-odd-even, BELOW"
  })
  void everyPointOfThePartsOnTheGlassIsOnThePaper(String name, View view) throws IOException {
    Layout layout = ReadyLayouts.find(name).orElseThrow();
    Set<PartKind> kinds = PartKind.alwaysOn();
    Path pdf = print(layout, kinds, view);
    BelowPanRail foot = view == View.ABOVE ? BelowPanRail.NONE : BelowPanRail.NAMES;
    EngineGeometry glass =
        EngineGeometry.of(
            layout, view, new Bounds(31, 17, 1100, 520), Glass.screen(TABLET, 1), foot);
    Drawing window = draw(glass, Asked.of(kinds));
    EngineGeometry paper = paper(layout, view, foot);
    double factor = paper.pitch() / glass.pitch();
    Set<Point> printed = points(pdf);
    assertThat(factor).isBetween(0.1, 1.0);
    List<Point> wanted = new ArrayList<>();
    for (PartFigure figure : window.parts()) {
      figure.shapes().stream()
          .filter(shape -> DrawnAs.IN.shows(shape.role()))
          .forEach(shape -> wanted.addAll(points(shape)));
    }
    assertThat(wanted).hasSizeGreaterThan(100);
    double dx = paper.bounds().x() - factor * glass.bounds().x();
    double dy = paper.axis() - factor * glass.axis();
    assertThat(wanted)
        .allSatisfy(
            point ->
                assertThat(isThere(printed, dx + factor * point.x(), dy + factor * point.y()))
                    .as(point + " of the glass")
                    .isTrue());
  }

  private static Drawing draw(EngineGeometry at, Asked asked) {
    return at.view() == View.ABOVE ? EngineAbove.of(at, asked) : EngineBelow.of(at, asked);
  }

  /** As the page has it: as high as it comes out, below its captions. */
  private static EngineGeometry paper(Layout layout, View view, BelowPanRail foot) {
    double mm = 72 / 25.4;
    double top = 30 + 3.4 + 1.4;
    Bounds room = new Bounds(25 * mm, top * mm, 160 * mm, 110 * mm);
    EngineGeometry first = EngineGeometry.of(layout, view, room, Book.GLASS, foot);
    Bounds exact = new Bounds(25 * mm, top * mm, 160 * mm, first.height());
    return EngineGeometry.of(layout, view, exact, Book.GLASS, foot);
  }

  private Path print(Layout layout, Set<PartKind> kinds, View view) throws IOException {
    Path pdf = folder.resolve("drawing.pdf");
    RecordEngine engine = new RecordEngine(layout, kinds, Map.of(), Set.of(), Set.of(), List.of());
    try (Book book = new Book("Drawing")) {
      new EngineArt(engine).side(book.page(PaperSize.A4, false), view, 25, 30, 160, 110);
      book.save(Outgoing.to(pdf));
    }
    return pdf;
  }

  /** The ends of its lines and curves. */
  private static List<Point> points(Shape shape) {
    List<Point> points = new ArrayList<>();
    if (shape instanceof Shape.Outline outline) {
      for (PathStep step : outline.steps()) {
        if (step instanceof PathStep.Move move) {
          points.add(new Point(move.x(), move.y()));
        } else if (step instanceof PathStep.Line line) {
          points.add(new Point(line.x(), line.y()));
        } else if (step instanceof PathStep.Curve curve) {
          points.add(new Point(curve.x(), curve.y()));
        }
      }
    } else if (shape instanceof Shape.Disc disc) {
      points.add(new Point(disc.x(), disc.y() - disc.radius()));
      points.add(new Point(disc.x() + disc.radius(), disc.y()));
    }
    return points;
  }

  /** The same of a page, in points from its upper left corner. */
  private static Set<Point> points(Path pdf) throws IOException {
    Set<Point> points = new HashSet<>();
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDPage page = document.getPage(0);
      double high = page.getMediaBox().getHeight();
      List<Double> numbers = new ArrayList<>();
      for (Object token : new PDFStreamParser(page).parse()) {
        if (token instanceof COSNumber number) {
          numbers.add((double) number.floatValue());
        } else if (token instanceof Operator operator) {
          if (Set.of("m", "l", "c").contains(operator.getName())) {
            int last = numbers.size() - 1;
            points.add(new Point(numbers.get(last - 1), high - numbers.get(last)));
          }
          numbers.clear();
        }
      }
    }
    return points;
  }

  private static boolean isThere(Set<Point> printed, double x, double y) {
    return printed.stream()
        .anyMatch(at -> Math.abs(at.x() - x) < NEAR && Math.abs(at.y() - y) < NEAR);
  }
}
