package wherefrom.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.job.BenchJob;
import wherefrom.job.OpenJob;
import wherefrom.job.numbers.PlotSample;
import wherefrom.job.pages.RecordPlot;
import wherefrom.job.record.RecordPlots;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingSetting;
import wherefrom.logbook.LogbookFile;
import wherefrom.pdf.Typeface;
import wherefrom.workings.chart.ChartLayout;
import wherefrom.workings.chart.ChartMark;
import wherefrom.workings.chart.Surface;

/** No label of a plot lies on a curve, a limit or a level, on paper or on the glass. */
class PlotWordsTest {
  private static final Typeface FACE = Typeface.regular();

  private static List<RecordPlot> plots() {
    List<RecordPlot> all = new ArrayList<>(RecordPlots.of(PlotSample.planned()));
    try (OpenJob demo = new OpenJob(LogbookFile.read(Path.of("demo-data")), Clock.systemUTC())) {
      all.addAll(RecordPlots.of(demo));
    }
    BenchJob bench = BenchJob.v8();
    TimingBook book = new TimingBook(bench.job);
    book.set(TimingSetting.STATED_LIFT, "0.050 in");
    lobe(book, new ValveSpot(1, ValveSide.INTAKE), 108);
    lobe(book, new ValveSpot(1, ValveSide.EXHAUST), -112);
    all.addAll(RecordPlots.of(bench.job));
    return all;
  }

  /** A raised cosine of 276 degrees from seat to seat. */
  private static void lobe(TimingBook book, ValveSpot lobe, int centre) {
    for (int off = -140; off <= 140; off += 10) {
      double lift = Math.abs(off) < 138 ? 0.15 * (1 + Math.cos(Math.PI * off / 138)) : 0;
      book.read(lobe, "" + (centre + off), String.format(Locale.ROOT, "%.4f", lift));
    }
  }

  /** A surface as wide and high as this, in heights of a capital. */
  private static Surface surface(double wide, double high) {
    return new Surface(wide, high, 1, words -> FACE.width(FACE.clean(words)));
  }

  @ParameterizedTest
  @CsvSource({
    "84, 21.5",
    "40, 21.5",
    "84, 23.5",
    "39, 23",
    "33, 20",
    "30, 13.2",
    "28, 9.3",
    "19, 9"
  })
  void wordsLieOnNoLine(double wide, double high) {
    Surface surface = surface(wide, high);
    List<RecordPlot> plots = plots();
    assertThat(plots).hasSizeGreaterThan(10);
    for (RecordPlot plot : plots) {
      List<ChartMark> marks = ChartLayout.of(plot.chart(), surface);
      List<Line2D> lines = new ArrayList<>();
      for (ChartMark mark : marks) {
        if (mark instanceof ChartMark.Line line && line.look() != ChartMark.Look.THIN) {
          lines.add(new Line2D.Double(line.x1(), line.y1(), line.x2(), line.y2()));
        }
      }
      for (ChartMark mark : marks) {
        if (mark instanceof ChartMark.Words words) {
          Rectangle2D box = box(words, surface);
          assertThat(lines)
              .as(plot.title() + ": " + words.text())
              .noneMatch(line -> line.intersects(box));
        }
      }
    }
  }

  private static Rectangle2D box(ChartMark.Words words, Surface surface) {
    double wide = surface.widths().applyAsDouble(words.text());
    double left =
        switch (words.side()) {
          case BEGIN -> words.x();
          case MIDDLE -> words.x() - wide / 2;
          case END -> words.x() - wide;
        };
    return new Rectangle2D.Double(left, words.y() - 0.5, wide, 1);
  }
}
