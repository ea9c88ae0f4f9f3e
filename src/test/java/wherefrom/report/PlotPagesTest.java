package wherefrom.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.files.Outgoing;
import wherefrom.job.OpenJob;
import wherefrom.job.measure.Instruments;
import wherefrom.job.numbers.PlotSample;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.RecordPlot;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.record.RecordPlots;
import wherefrom.workings.chart.Axis;
import wherefrom.workings.chart.Chart;

/**
 * Looks at the printed page as a reader does: the figures beside the axes say where a value must
 * lie, and there the ink must be.
 */
class PlotPagesTest {
  private static final float DPI = 200;

  @TempDir Path folder;

  /** A page as ink, and the words on it with the middle of each in points from the upper left. */
  private record Page(BufferedImage image, List<Word> words, String text) {
    double ink(double x, double y) {
      int rgb =
          image.getRGB((int) Math.round(x * DPI / 72 - 0.5), (int) Math.round(y * DPI / 72 - 0.5));
      return 1 - (rgb & 0xFF) / 255.0;
    }
  }

  private record Word(String text, double x, double y) {}

  /** The place of a value, from two figures beside the axes. */
  private static final class Ruler {
    private final Axis axis;
    private final double begin;
    private final double whole;

    private Ruler(Axis axis, double begin, double whole) {
      this.axis = axis;
      this.begin = begin;
      this.whole = whole;
    }

    static Ruler across(Page page, Axis axis) {
      return of(axis, printed(page, axis), tick -> lowest(page, tick).x());
    }

    static Ruler up(Page page, Axis axis) {
      return of(axis, printed(page, axis), tick -> leftmost(page, tick).y());
    }

    /** Names give way to each other: those that are there. */
    private static List<Axis.Tick> printed(Page page, Axis axis) {
      return axis.ticks().stream()
          .filter(tick -> page.words().stream().anyMatch(w -> w.text().equals(tick.words())))
          .toList();
    }

    private static Ruler of(
        Axis axis, List<Axis.Tick> ticks, java.util.function.ToDoubleFunction<Axis.Tick> place) {
      Axis.Tick first = ticks.get(0);
      Axis.Tick last = ticks.get(ticks.size() - 1);
      double from = place.applyAsDouble(first);
      double parts = axis.part(last.at()) - axis.part(first.at());
      double whole = (place.applyAsDouble(last) - from) / parts;
      return new Ruler(axis, from - axis.part(first.at()) * whole, whole);
    }

    double at(double value) {
      return begin + axis.part(value) * whole;
    }

    private static Word lowest(Page page, Axis.Tick tick) {
      return page.words().stream()
          .filter(word -> word.text().equals(tick.words()))
          .max(java.util.Comparator.comparingDouble(Word::y))
          .orElseThrow();
    }

    private static Word leftmost(Page page, Axis.Tick tick) {
      return page.words().stream()
          .filter(word -> word.text().equals(tick.words()))
          .min(java.util.Comparator.comparingDouble(Word::x))
          .orElseThrow();
    }
  }

  private Page print(RecordPlot plot) throws IOException {
    BuildRecord record =
        new BuildRecord(
            "Launch", "V8", LocalDate.EPOCH, LocalDate.EPOCH, List.of(), List.of(plot), List.of());
    Path pdf = folder.resolve("plot.pdf");
    new FileReports().writeRecord(record, PaperSize.A4, Outgoing.replacing(pdf));
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      List<Word> words = new ArrayList<>();
      PDFTextStripper stripper =
          new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> letters) throws IOException {
              super.writeString(text, letters);
              TextPosition first = letters.get(0);
              TextPosition last = letters.get(letters.size() - 1);
              double end = last.getXDirAdj() + last.getWidthDirAdj();
              double capital = 0.725 * first.getFontSizeInPt();
              words.add(
                  new Word(text, (first.getXDirAdj() + end) / 2, first.getYDirAdj() - capital / 2));
            }
          };
      int last = document.getNumberOfPages();
      stripper.setStartPage(last);
      String text = stripper.getText(document);
      return new Page(new PDFRenderer(document).renderImageWithDPI(last - 1, DPI), words, text);
    }
  }

  private static RecordPlot find(OpenJob job, String title) {
    return RecordPlots.of(job).stream()
        .filter(plot -> plot.title().equals(title))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theRatioCurveItsBandAndTheWantedRatioLieWhereTheAxesSay() throws IOException {
    RecordPlot plot = find(PlotSample.planned(), "Idea 1: Compression ratio against the cut");
    Chart chart = plot.chart();
    Page page = print(plot);
    assertThat(page.text())
        .contains("Idea 1: Compression ratio against the cut")
        .contains("cut off the head, in", "compression ratio", "wanted", "Dot: the ratio 9.5");
    Ruler across = Ruler.across(page, chart.across());
    Ruler up = Ruler.up(page, chart.up());
    List<Chart.Point> points = chart.traces().get(0).points();
    double cut = chart.columns().get(0).place();
    for (int at = 2; at < points.size() - 1; at++) {
      Chart.Point point = points.get(at);
      double x = across.at(point.across());
      assertThat(page.ink(x, up.at(point.up()))).as("curve at %s", point).isGreaterThan(0.6);
      if (Math.abs(point.across() - cut) > 0.003) {
        double inside = up.at((point.up() + point.high()) / 2);
        if (up.at(point.up()) - inside > 3 && Math.abs(inside - up.at(9.5)) > 10) {
          assertThat(page.ink(x, inside)).as("band at %s", point).isBetween(0.1, 0.3);
        }
        assertThat(page.ink(x, up.at(point.low()) + 6)).as("below %s", point).isLessThan(0.05);
      }
    }
    assertThat(page.ink(across.at(cut), up.at(9.5) + 2)).as("the plan's dot").isGreaterThan(0.8);
    assertThat(dark(page, across.at(0.001), across.at(0.01), up.at(9.5)))
        .as("the dotted level of the wanted ratio")
        .isBetween(0.3, 0.7);
  }

  /** The part of a level stretch that is dark. */
  private static double dark(Page page, double from, double to, double y) {
    int dark = 0;
    int all = 0;
    for (double x = from; x < to; x += 0.25) {
      all++;
      dark += page.ink(x, y) > 0.4 ? 1 : 0;
    }
    return (double) dark / all;
  }

  @Test
  void clearancesStandBetweenTheirLimits() throws IOException {
    OpenJob job = PlotSample.measured();
    new Instruments(job).limit("main-journal", "clearance", "0.0010", "0.0025", "manual, p. 6-12");
    RecordPlot plot = find(job, "Oil clearance of the main bearings");
    Page page = print(plot);
    assertThat(page.text()).contains("main 1", "main 2", "clearance, in", "out", "p. 6-12");
    Ruler across = Ruler.across(page, plot.chart().across());
    Ruler up = Ruler.up(page, plot.chart().up());
    for (Chart.Column column : plot.chart().columns()) {
      double x = across.at(column.place());
      column
          .value()
          .ifPresent(value -> assertThat(page.ink(x, up.at(value) + 1)).isGreaterThan(0.8));
      for (double limit : column.limits()) {
        assertThat(page.ink(x - 6, up.at(limit))).as("limit %s", limit).isGreaterThan(0.8);
        assertThat(page.ink(x - 6, up.at(limit) + 3)).as("under %s", limit).isLessThan(0.05);
      }
    }
  }

  @Test
  void theOddOneIsASquareAndTheOthersAreRound() throws IOException {
    RecordPlot plot = find(PlotSample.measured(), "Straightedge over the stud tops, left bank");
    Page page = print(plot);
    assertThat(page.text()).contains("5 IN", "straightedge", "fail", "it is pulling out");
    Ruler up = Ruler.up(page, plot.chart().up());
    Ruler across = Ruler.across(page, plot.chart().across());
    for (Chart.Column column : plot.chart().columns()) {
      double x = across.at(column.place());
      double y = up.at(column.value().orElseThrow());
      assertThat(page.ink(x, y)).as(column.toString()).isGreaterThan(0.8);
      double corner = page.ink(x + 2.9, y + 2.9);
      if (column.odd()) {
        assertThat(corner).isGreaterThan(0.8);
      } else {
        assertThat(corner).isLessThan(0.5);
      }
    }
  }

  @Test
  void everyPlotOfAMeasuredEnginePrintsWithItsTitleAndAxes() throws IOException {
    OpenJob job = PlotSample.planned();
    Path pdf = folder.resolve("all.pdf");
    BuildRecord record = BuildRecord.of(job).withPlots(RecordPlots.of(job));
    new FileReports().writeRecord(record, PaperSize.A4, Outgoing.replacing(pdf));
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDFTextStripper stripper = new PDFTextStripper();
      String text = stripper.getText(document);
      for (RecordPlot plot : record.plots()) {
        assertThat(text)
            .contains(plot.title(), plot.chart().up().words(), plot.chart().across().words());
      }
      assertThat(text).contains("thrust", "axial", "standard", "thick: usual margin");
    }
    assertThat(record.plots()).hasSize(8);
  }
}
