package wherefrom.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.files.Outgoing;
import wherefrom.job.print.Nudge;
import wherefrom.job.print.PrintOrder;
import wherefrom.job.print.PrintOutcome;
import wherefrom.job.print.PrintSetup;
import wherefrom.job.print.Stock;
import wherefrom.job.print.StockChoice;
import wherefrom.job.print.TagFace;

class PdfSheetPrinterTest {
  private static PrintSetup atDpi(PrintSetup setup, int dots) {
    return new PrintSetup(setup.stock(), setup.start(), setup.nudge(), OptionalInt.of(dots));
  }

  private static final String SHEET = "a4-3x8-63.5x33.9";
  private static final List<TagFace> TAGS = SampleTags.parts();
  private final PdfSheetPrinter printer = new PdfSheetPrinter();

  @TempDir Path folder;

  private PDDocument save(List<TagFace> tags, PrintSetup setup) throws IOException {
    return save(PrintOrder.of("Old launch: part tags", tags, setup));
  }

  private PDDocument save(PrintOrder order) throws IOException {
    Path file = folder.resolve("tags.pdf");
    assertThat(printer.save(order, Outgoing.replacing(file)))
        .isInstanceOf(PrintOutcome.Printed.class);
    return Loader.loadPDF(file.toFile());
  }

  private String refusal(PrintOrder order) throws IOException {
    Path file = folder.resolve("none.pdf");
    PrintOutcome outcome = printer.save(order, Outgoing.replacing(file));
    assertThat(file).doesNotExist();
    return ((PrintOutcome.Refused) outcome).sentences().get(0);
  }

  @Test
  void seventyFourTagsTakeFourSheets() throws IOException {
    Path file = folder.resolve("tags.pdf");
    PrintOrder order = PrintOrder.of("Tags", TAGS, PrintSetup.on(SHEET));
    assertThat(printer.save(order, Outgoing.replacing(file)))
        .isEqualTo(new PrintOutcome.Printed(74, 4));
  }

  @Test
  void printingStartsAtTheLabelThatIsAskedForAndGoesOnFromTheFirst() throws IOException {
    LabelStock stock = stock();
    try (PDDocument pdf = save(TAGS.subList(0, 5), PrintSetup.on(SHEET).startingAt(23))) {
      assertThat(pdf.getNumberOfPages()).isEqualTo(2);
      Decoders decoders = new Decoders();
      List<String> first = read(decoders, Raster.ofPage(pdf, 0, 300), stock);
      List<String> second = read(decoders, Raster.ofPage(pdf, 1, 300), stock);
      assertThat(first.subList(0, 22)).containsOnly("");
      assertThat(first.subList(22, 24)).isEqualTo(digits(0, 2));
      assertThat(second.subList(0, 3)).isEqualTo(digits(2, 5));
      assertThat(second.subList(3, 24)).containsOnly("");
    }
  }

  private static List<String> read(Decoders decoders, Raster page, LabelStock stock) {
    List<String> read = new ArrayList<>();
    for (int label = 0; label < stock.labelsPerPage(); label++) {
      read.add(decoders.zxing(page.part(stock.labelBox(label))));
    }
    return read;
  }

  private static List<String> digits(int from, int to) {
    return TAGS.subList(from, to).stream().map(tag -> tag.code().digits()).toList();
  }

  private LabelStock stock() {
    return ((StockReading.Good) StockShelf.ofReady().find(SHEET)).stock();
  }

  @Test
  void aNudgeMovesThePrintByHalfAMillimetreAStep() throws IOException {
    double[] plain = frameCorner(PrintSetup.on(SHEET));
    double[] moved = frameCorner(PrintSetup.on(SHEET).nudged(new Nudge(3, -2)));
    double dot = 25.4 / 300;
    assertThat(moved[0] - plain[0]).isBetween(1.5 - dot, 1.5 + dot);
    assertThat(moved[1] - plain[1]).isBetween(-1 - dot, -1 + dot);
  }

  /** The top left corner of the first frame, in millimetres. */
  private double[] frameCorner(PrintSetup setup) throws IOException {
    LabelPlan plan = LabelPlan.find(stock(), 300).orElseThrow();
    Box label = stock().labelBox(0);
    try (PDDocument pdf = save(TAGS.subList(0, 1), setup)) {
      Raster page = Raster.ofPage(pdf, 0, 300);
      double dots = 300 / 25.4;
      int row = (int) ((label.y() + plan.symbol().y() + plan.symbol().height() / 2) * dots);
      int x = (int) ((label.x() + plan.symbol().x() - 1.5) * dots);
      while (page.at(x, row) > 127) {
        x++;
      }
      int column = x + 3;
      int y = row;
      while (page.at(column, y) <= 127) {
        y--;
      }
      return new double[] {x / dots, (y + 1) / dots};
    }
  }

  @Test
  void everyModuleIsWholeDotsAtThePrintersOwnResolution() throws IOException {
    for (int dpi : List.of(203, 300, 600)) {
      LabelPlan plan = LabelPlan.find(stock(), dpi).orElseThrow();
      try (PDDocument pdf = save(TAGS.subList(0, 1), atDpi(PrintSetup.on(SHEET), dpi))) {
        Box symbol = plan.symbol().movedBy(stock().labelBox(0).x(), stock().labelBox(0).y());
        Raster raster = Raster.ofPage(pdf, 0, dpi).part(symbol);
        for (int y = 0; y < raster.height(); y++) {
          for (int x = 0; x < raster.width(); x++) {
            assertThat(raster.at(x, y)).as("no gray at %d, %d", x, y).isIn(0, 255);
          }
        }
      }
    }
  }

  @Test
  void theFileSaysWhatItIsAndIsPrintedAtItsOwnSize() throws IOException {
    try (PDDocument pdf = save(TAGS, PrintSetup.on(SHEET))) {
      assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("Old launch: part tags");
      assertThat(pdf.getDocumentCatalog().getViewerPreferences().getPrintScaling())
          .isEqualTo("None");
      assertThat(pdf.getPage(0).getMediaBox().getWidth() * 25.4 / 72).isBetween(209.99, 210.01);
      for (PDPage page : pdf.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          assertThat(font.isEmbedded()).isTrue();
          assertThat(font.getName()).contains("B612");
        }
      }
      String words = new PDFTextStripper().getText(pdf);
      assertThat(words)
          .contains("This line must measure 100 mm")
          .contains(SheetMargin.OUTRANKED)
          .contains("1 EX", "0003 20", "cylinder 1, exhaust");
    }
  }

  @Test
  void aJobNameInAnyScriptPrints() throws IOException {
    List<TagFace> tags = SampleTags.parts("Ö½°é \u0416\u30a8\uD83D\uDE97\n\0").subList(0, 2);
    try (PDDocument pdf = save(PrintOrder.of("\u30a8\u30f3\uD83D", tags, PrintSetup.on(SHEET)))) {
      assertThat(new PDFTextStripper().getText(pdf)).contains("Ö½°é");
    }
  }

  @Test
  void theTestPageHasOutlinesAndRulers() throws IOException {
    for (Stock stock : printer.listStocks()) {
      try (PDDocument pdf = save(PrintOrder.testPage(PrintSetup.on(stock.name())))) {
        assertThat(pdf.getNumberOfPages()).isEqualTo(1);
        assertThat(new PDFTextStripper().getText(pdf)).contains("Measure the rulers");
      }
    }
  }

  @Test
  void whatCannotBePrintedIsRefusedWithASentence() throws IOException {
    PrintSetup setup = PrintSetup.on(SHEET);
    assertThat(refusal(PrintOrder.of("t", TAGS, setup.startingAt(25)))).contains("25", "1 to 24");
    assertThat(refusal(PrintOrder.of("t", TAGS, setup.startingAt(0)))).contains("1 to 24");
    assertThat(refusal(PrintOrder.of("t", TAGS, atDpi(setup, 72)))).contains("72");
    assertThat(refusal(PrintOrder.of("t", List.of(), setup))).contains("nothing to print");
    assertThat(refusal(PrintOrder.of("t", TAGS, PrintSetup.on("a5")))).contains("\"a5\"");
    assertThat(printer.findStock("a5")).isInstanceOf(StockChoice.Refused.class);
    assertThat(printer.findStock(SHEET))
        .isInstanceOfSatisfying(
            StockChoice.Chosen.class,
            chosen -> assertThat(chosen.stock().labelsPerPage()).isEqualTo(24));
  }

  @Test
  void printingDirectlySendsEveryPageAndSaysWhatCameOfIt() throws IOException {
    PrintOrder order = PrintOrder.of("Tags", TAGS, PrintSetup.on(SHEET));
    List<Integer> pages = new ArrayList<>();
    PdfSheetPrinter sending =
        new PdfSheetPrinter(
            (pageable, title) -> {
              pages.add(pageable.getNumberOfPages());
              assertThat(title).isEqualTo("Tags");
              return PrinterDoor.Answer.PRINTED;
            });
    assertThat(sending.print(order)).isEqualTo(new PrintOutcome.Printed(74, 4));
    assertThat(pages).containsExactly(4);
    PdfSheetPrinter closing = new PdfSheetPrinter((p, title) -> PrinterDoor.Answer.CANCELLED);
    assertThat(closing.print(order)).isInstanceOf(PrintOutcome.Cancelled.class);
    PdfSheetPrinter alone = new PdfSheetPrinter((p, title) -> PrinterDoor.Answer.NO_PRINTER);
    assertThat(((PrintOutcome.Refused) alone.print(order)).sentences().get(0))
        .contains("no printer");
  }

  @Test
  void aFinishedFileIsPrintedAsItIs() throws IOException {
    Path file = folder.resolve("slip.pdf");
    printer.save(PrintOrder.of("Slip", TAGS, PrintSetup.on(SHEET)), Outgoing.replacing(file));
    List<Integer> pages = new ArrayList<>();
    PdfSheetPrinter sending =
        new PdfSheetPrinter(
            (pageable, title) -> {
              pages.add(pageable.getNumberOfPages());
              assertThat(title).isEqualTo("Launch V8: visit 1");
              return PrinterDoor.Answer.PRINTED;
            });
    assertThat(sending.printFile(file, "Launch V8: visit 1"))
        .isEqualTo(new PrintOutcome.Printed(0, 4));
    assertThat(pages).containsExactly(4);
    assertThat(printer.printFile(file, "t")).isInstanceOf(PrintOutcome.Refused.class);
  }

  @Test
  void withoutAScreenDirectPrintingIsRefusedKindly() throws IOException {
    PrintOrder order = PrintOrder.of("Tags", TAGS, PrintSetup.on(SHEET));
    assertThat(((PrintOutcome.Refused) printer.print(order)).sentences().get(0))
        .contains("Save the PDF");
  }
}
