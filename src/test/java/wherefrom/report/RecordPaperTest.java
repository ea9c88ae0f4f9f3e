package wherefrom.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.EngineGeometry;
import wherefrom.drawing.View;
import wherefrom.files.Outgoing;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.inspection.measure.Judgement;
import wherefrom.job.BenchJob;
import wherefrom.job.By;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OpenJob;
import wherefrom.job.bags.BagOutcome;
import wherefrom.job.bags.Bags;
import wherefrom.job.bags.BigParts;
import wherefrom.job.entry.AtAssembly;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BoltHole;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartSort;
import wherefrom.job.pages.CylinderSheet;
import wherefrom.job.pages.LimitBar;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.RecordLine;
import wherefrom.job.pages.RecordSheets;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.record.RecordPlots;
import wherefrom.logbook.LogbookFile;
import wherefrom.logbook.PhotoFiles;
import wherefrom.parts.Place;
import wherefrom.pdf.Book;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;

/** The build record as the binder gets it: its pages are rendered and read. */
class RecordPaperTest {
  private static final int DPI = 144;

  @TempDir Path folder;

  /** A rendered record. */
  private record Printed(List<String> texts, List<BufferedImage> images) {}

  private Printed print(BuildRecord record, ImageType type) throws IOException {
    Path pdf = folder.resolve("record.pdf");
    new FileReports().writeRecord(record, PaperSize.A4, Outgoing.replacing(pdf));
    List<String> texts = new ArrayList<>();
    List<BufferedImage> images = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        texts.add(stripper.getText(document).replaceAll("\\s+", " "));
        images.add(new PDFRenderer(document).renderImageWithDPI(page - 1, DPI, type));
      }
    }
    return new Printed(texts, images);
  }

  private static BuildRecord demo() {
    Path folder = Path.of("demo-data");
    try (OpenJob job = OpenJob.in(folder, LogbookFile.read(folder), Clock.systemUTC(), By.FIRST)) {
      return BuildRecord.of(job, new PhotoFiles()).withPlots(RecordPlots.of(job));
    }
  }

  @Test
  void theDemoIsTwelveToSixteenPagesEachWithItsNumber() throws IOException {
    List<String> texts = print(demo(), ImageType.GRAY).texts();
    assertThat(texts).hasSizeBetween(12, 16);
    for (int at = 0; at < texts.size(); at++) {
      assertThat(texts.get(at)).contains((at + 1) + " / " + texts.size());
      assertThat(texts.get(at)).contains("outranks this tool").doesNotContain("cannot be shown");
    }
  }

  /** Letter is less high: drawings and photographs give way, so that no page holds a rest. */
  @Test
  void onLetterTheDemoHasAsManyPages() throws IOException {
    int a4 = pages(PaperSize.A4);
    assertThat(a4).isBetween(12, 16);
    assertThat(pages(PaperSize.LETTER)).isEqualTo(a4);
  }

  private int pages(PaperSize paper) throws IOException {
    Path pdf = folder.resolve(paper + ".pdf");
    new FileReports().writeRecord(demo(), paper, Outgoing.to(pdf));
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return document.getNumberOfPages();
    }
  }

  @Test
  void theContentsNameThePageOfEachCylinder() throws IOException {
    List<String> texts = print(demo(), ImageType.GRAY).texts();
    for (int cylinder = 1; cylinder <= 8; cylinder++) {
      String name = "Cylinder " + cylinder;
      int page = 0;
      while (!texts.get(page).startsWith(cylinder + " " + name)
          && !texts.get(page).startsWith(name)) {
        page++;
      }
      assertThat(texts.get(1))
          .containsPattern(name + ": (left|right) bank, \\w+ from the front " + (page + 1) + " ");
    }
  }

  @Test
  void theCoverSaysWhatIsOpenAndWhatHasNoRoomThereFollowsOnTheNextPage() throws IOException {
    BuildRecord record = demo();
    List<String> texts = print(record, ImageType.GRAY).texts();
    String both = texts.get(0) + texts.get(1);
    record
        .find(RecordTable.NOT_CHECKED)
        .rows()
        .forEach(row -> assertThat(both).contains(row.cells().get(0)));
    assertThat(texts.get(0)).contains("BUILD RECORD", "built by, date", "checked by, date");
    assertThat(texts.get(1)).contains("engine number", "owner", "machine shop");
  }

  @Test
  void everyResultOfTheJobStandsOnAPageWithItsLimit() throws IOException {
    BuildRecord record = demo();
    String all = String.join(" ", print(record, ImageType.GRAY).texts());
    try (OpenJob job = new OpenJob(LogbookFile.read(Path.of("demo-data")), Clock.systemUTC())) {
      for (MeasuredResult result : job.state().measures().all()) {
        for (Judgement judgement : result.judgements()) {
          String figure = judgement.value().text().split(" ± ")[0];
          assertThat(all).contains(figure);
          assertThat(all).contains(judgement.limit().source());
        }
      }
    }
  }

  /** The middle of a rocker's arm on the cover, by the geometry that the window draws with too. */
  @Test
  void theCoverDrawsTheGeometryOfTheWindow() throws IOException {
    BenchJob bench = BenchJob.v8();
    for (String key : List.of("3EX", "3IN")) {
      Place place = Place.find("rocker@" + key).orElseThrow();
      bench.record(new PartFitted(bench.item("rocker@" + key), place, "", Optional.empty()));
    }
    BufferedImage cover = print(BuildRecord.of(bench.job), ImageType.RGB).images().get(0);
    EngineGeometry at = above(bench);
    assertThat(color(cover, at, "3IN")).as("fitted").isEqualTo(0xCDE6F6);
    assertThat(color(cover, at, "3EX")).as("fitted").isEqualTo(0xCDE6F6);
    assertThat(color(cover, at, "5IN")).as("out: the head is seen").isEqualTo(0xEDF0EE);
  }

  /** Where the cover has the drawing: below its head and captions, over the whole width. */
  private static EngineGeometry above(BenchJob bench) {
    double mm = 72 / 25.4;
    Bounds room = new Bounds(25 * mm, 53.8 * mm, 172 * mm, 62 * mm);
    EngineGeometry first =
        EngineGeometry.of(
            bench.job.state().layout(), View.ABOVE, room, Book.GLASS, BelowPanRail.NONE);
    Bounds exact = new Bounds(25 * mm, 53.8 * mm, 172 * mm, first.height());
    return EngineGeometry.of(
        bench.job.state().layout(), View.ABOVE, exact, Book.GLASS, BelowPanRail.NONE);
  }

  private static int color(BufferedImage page, EngineGeometry at, String key) {
    var valve = (wherefrom.engine.ValveSpot) Place.find("rocker@" + key).orElseThrow().spot();
    double x = at.valveX(valve);
    double y = at.axis() + 0.74 * at.pitch();
    return page.getRGB((int) Math.round(x * DPI / 72), (int) Math.round(y * DPI / 72)) & 0xFFFFFF;
  }

  @Test
  void aNewPartIsSaidToBeNewAndTheOldOneStaysInTheRecord() throws IOException {
    BenchJob bench = BenchJob.v8();
    bench.decide("pushrod@3EX", Decision.REPLACE);
    int fresh = bench.job.nextItem();
    bench.record(
        new PartReplaced(
            bench.item("pushrod@3EX"), fresh, "bent", Optional.empty(), PartSort.SAME));
    bench.record(
        new PartFitted(fresh, Place.find("pushrod@3EX").orElseThrow(), "", Optional.empty()));
    RecordSheets sheets = BuildRecord.of(bench.job).sheets().orElseThrow();
    CylinderSheet third = sheets.cylinders().get(2);
    assertThat(third.columns().stream().flatMap(column -> column.lines().stream()))
        .extracting(RecordLine::name)
        .contains("pushrod, new", "pushrod, old");
    String page =
        print(BuildRecord.of(bench.job), ImageType.GRAY).texts().stream()
            .filter(text -> text.startsWith("3 Cylinder 3"))
            .findFirst()
            .orElseThrow();
    assertThat(page).contains("Cylinder 3", "NEW", "replaced: bent", "pushrod, old");
  }

  @Test
  void inBlackAloneFittedAndOutAreTold() throws IOException {
    BenchJob bench = BenchJob.v8();
    Place place = Place.find("rocker@3EX").orElseThrow();
    bench.record(new PartFitted(bench.item("rocker@3EX"), place, "", Optional.empty()));
    BufferedImage cover = print(BuildRecord.of(bench.job), ImageType.GRAY).images().get(0);
    EngineGeometry at = above(bench);
    int fitted = darkest(cover, at, "3EX");
    int out = darkest(cover, at, "5EX");
    assertThat(fitted).as("the nut of a fitted rocker is black").isLessThan(60);
    assertThat(out).as("where a rocker is out nothing is drawn inside").isGreaterThan(200);
  }

  /** The darkest gray at the stud, where the rocker's nut is. */
  private static int darkest(BufferedImage page, EngineGeometry at, String key) {
    var valve = (wherefrom.engine.ValveSpot) Place.find("rocker@" + key).orElseThrow().spot();
    int x = (int) Math.round(at.valveX(valve) * DPI / 72);
    int y = (int) Math.round((at.axis() + 0.62 * at.pitch()) * DPI / 72);
    return page.getRGB(x, y) & 0xFF;
  }

  @Test
  void aLimitsStretchShowsBothWallsAndTheWholeBand() {
    for (double value : new double[] {-2, 0, 0.001, 5, 900}) {
      for (OptionalDouble lower : List.of(OptionalDouble.empty(), OptionalDouble.of(1))) {
        for (OptionalDouble upper : List.of(OptionalDouble.empty(), OptionalDouble.of(3))) {
          LimitBar bar = new LimitBar(value, 0.2, lower, upper, "", "");
          LimitBar.Span span = bar.span();
          String as = String.format(Locale.ROOT, "%s %s %s: %s", value, lower, upper, span);
          assertThat(span.least()).as(as).isLessThanOrEqualTo(value - 0.4 + 1e-9 + zero(bar));
          assertThat(span.most()).as(as).isGreaterThan(value + 0.4);
          lower.ifPresent(wall -> assertThat(wall).as(as).isBetween(span.least(), span.most()));
          upper.ifPresent(wall -> assertThat(wall).as(as).isBetween(span.least(), span.most()));
        }
      }
    }
  }

  /** A line may begin at zero, where what is measured cannot be less; the band is cut there. */
  private static double zero(LimitBar bar) {
    return bar.lower().isEmpty() && bar.value() >= 0 ? 2 * bar.uncertainty() : 0;
  }

  /** Nothing of them is said twice, and where none is kept no page is spent. */
  @Test
  void bagsAndBigPartsHaveAPageOfTheirOwn() throws IOException {
    BenchJob bench = BenchJob.v8();
    int none = print(BuildRecord.of(bench.job), ImageType.GRAY).texts().size();
    new BigParts(bench.job).nameOwn("oil cooler");
    BigParts parts = new BigParts(bench.job);
    parts.off(1, "");
    parts.decide(1, Decision.REUSE, "it is good");
    Amount length = Amount.of("2.5", Unit.INCH);
    BoltHole hole = new BoltHole(1, Optional.empty(), Optional.empty(), Optional.of(length));
    BagFilled filled =
        new BagFilled(1, "cooler bolts", 1, "", 4, List.of(hole), "", AtAssembly.NOT_SAID);
    assertThat(new Bags(bench.job).fill(filled)).isInstanceOf(BagOutcome.Logged.class);
    List<String> texts = print(BuildRecord.of(bench.job), ImageType.GRAY).texts();
    assertThat(texts).hasSize(none + 1);
    assertThat(texts.get(1)).containsPattern("Bags and big parts \\d+ ");
    assertThat(texts).filteredOn(text -> text.contains("cooler bolts")).hasSize(1);
    assertThat(String.join(" ", texts))
        .contains("4, for the oil cooler; hole 1: 2.5 in", "reuse: it is good");
  }

  @Test
  void everyKindOfLayoutPrints() throws IOException {
    BenchJob four = BenchJob.inline4();
    four.look("pushrod@1EX", "pushrod-roll", Look.FAIL);
    Printed printed = print(BuildRecord.of(four.job), ImageType.GRAY);
    assertThat(printed.texts().get(0)).contains("from above", "FRONT", "FLYWHEEL");
    assertThat(printed.texts().get(0)).doesNotContain("bank is");
    assertThat(printed.texts().get(2)).contains("Cylinder 1", "first from the front", "fail");
    assertThat(Optional.of(printed.texts().size()))
        .hasValueSatisfying(n -> assertThat(n).isLessThan(14));
  }
}
