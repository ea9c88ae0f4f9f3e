package wherefrom.print;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;
import wherefrom.files.Outgoing;
import wherefrom.job.image.ColourImage;
import wherefrom.job.print.PrintOrder;
import wherefrom.job.print.PrintOutcome;
import wherefrom.job.print.SheetPrinter;
import wherefrom.job.print.Stock;
import wherefrom.job.print.StockChoice;
import wherefrom.pdf.Typeface;

/** Prints tags and cards by way of PDF. */
public final class PdfSheetPrinter implements SheetPrinter {
  private final StockShelf shelf = StockShelf.ofReady();
  private final Typeface face = Typeface.regular();
  private final PrinterDoor printers;

  /** Prints with the printers that the system knows. */
  public PdfSheetPrinter() {
    this(new SystemPrinters());
  }

  PdfSheetPrinter(PrinterDoor printers) {
    this.printers = printers;
  }

  @Override
  public List<Stock> listStocks() {
    return shelf.listStocks().stream().map(stock -> stock.asStock(stock.name())).toList();
  }

  @Override
  public StockChoice findStock(String nameOrFile) {
    StockReading reading = shelf.find(nameOrFile);
    if (reading instanceof StockReading.Good good) {
      return new StockChoice.Chosen(good.stock().asStock(nameOrFile));
    }
    return new StockChoice.Refused(sentences((StockReading.Bad) reading));
  }

  @Override
  public synchronized String lacking(String text) {
    return face.lacking(text);
  }

  @Override
  public Optional<ColourImage> preview(PrintOrder order, int page, int longest) throws IOException {
    StockReading reading = shelf.find(order.setup().stock());
    if (!(reading instanceof StockReading.Good good)
        || OrderCheck.findFault(order, good.stock()).isPresent()) {
      return Optional.empty();
    }
    try (PdfPages pdf = new PdfPages(order.title())) {
      draw(order, good.stock(), pdf, page);
      int used = page == 1 ? order.setup().start() - 1 : 0;
      return page > pdf.count()
          ? Optional.empty()
          : Optional.of(SheetPicture.of(pdf.document(), page, good.stock(), used, longest));
    }
  }

  @Override
  public PrintOutcome save(PrintOrder order, Outgoing out) throws IOException {
    return make(
        order,
        pdf -> {
          out.write(pdf::write);
          return printed(order, pdf);
        });
  }

  @Override
  public PrintOutcome print(PrintOrder order) throws IOException {
    return make(order, pdf -> print(order, pdf));
  }

  @Override
  public PagePicture previewFile(Path pdf, int page, int longest) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      int pages = document.getNumberOfPages();
      int shown = Math.max(1, Math.min(page, pages));
      return new PagePicture(shown, pages, SheetPicture.of(document, shown, longest));
    }
  }

  @Override
  public PrintOutcome printFile(Path pdf, String title) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PrintOutcome.Printed done = new PrintOutcome.Printed(0, document.getNumberOfPages());
      return send(document, title, done);
    }
  }

  private PrintOutcome print(PrintOrder order, PdfPages pdf) throws IOException {
    return send(pdf.document(), order.title(), printed(order, pdf));
  }

  private PrintOutcome send(PDDocument document, String title, PrintOutcome.Printed done)
      throws IOException {
    return switch (printers.print(new PDFPageable(document), title)) {
      case PRINTED -> done;
      case CANCELLED -> new PrintOutcome.Cancelled();
      case NO_DISPLAY ->
          refused("There is no screen for the printer dialog. Save the PDF and print that.");
      case NO_PRINTER ->
          refused(
              "The system has no printer. Set one up in the system's settings. Or save the"
                  + " PDF and print it elsewhere.");
    };
  }

  private static PrintOutcome.Printed printed(PrintOrder order, PdfPages pdf) {
    return new PrintOutcome.Printed(order.faces().size(), pdf.count());
  }

  /** What is done with the finished pages. */
  private interface Use {
    PrintOutcome of(PdfPages pdf) throws IOException;
  }

  private PrintOutcome make(PrintOrder order, Use use) throws IOException {
    StockReading reading = shelf.find(order.setup().stock());
    if (!(reading instanceof StockReading.Good good)) {
      return new PrintOutcome.Refused(sentences((StockReading.Bad) reading));
    }
    LabelStock stock = good.stock();
    Optional<String> fault = OrderCheck.findFault(order, stock);
    if (fault.isPresent()) {
      return refused(fault.get());
    }
    try (PdfPages pdf = new PdfPages(order.title())) {
      draw(order, stock, pdf, Integer.MAX_VALUE);
      return use.of(pdf);
    }
  }

  private static void draw(PrintOrder order, LabelStock stock, PdfPages pdf, int mostPages)
      throws IOException {
    if (order.testPage()) {
      pdf.add(stock.page(), new TestPage(stock, pdf.letters()).content(order.setup().nudge()));
      return;
    }
    LabelPlan plan = LabelPlan.find(stock, OrderCheck.dpi(order, stock)).orElseThrow();
    new TagSheets(stock, plan, order).draw(pdf, mostPages);
  }

  private static PrintOutcome refused(String sentence) {
    return new PrintOutcome.Refused(List.of(sentence));
  }

  private static List<String> sentences(StockReading.Bad bad) {
    return bad.faults().stream().map(StockFault::sentence).toList();
  }
}
