package wherefrom.ui.hands;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.files.Outgoing;
import wherefrom.job.image.ColourImage;
import wherefrom.job.print.PrintOrder;
import wherefrom.job.print.PrintOutcome;
import wherefrom.job.print.SheetPrinter;
import wherefrom.job.print.Stock;
import wherefrom.job.print.StockChoice;
import wherefrom.print.PdfSheetPrinter;

/** The program's own printing, into PDF files instead of a printer. */
final class FilePrinter implements SheetPrinter {
  private final SheetPrinter real = new PdfSheetPrinter();
  private final Path folder;
  private final List<Path> sheets = new ArrayList<>();

  FilePrinter(Path folder) {
    this.folder = folder;
  }

  /** What came out of the printer, in order. */
  List<Path> sheets() {
    return List.copyOf(sheets);
  }

  @Override
  public List<Stock> listStocks() {
    return real.listStocks();
  }

  @Override
  public StockChoice findStock(String nameOrFile) {
    return real.findStock(nameOrFile);
  }

  @Override
  public String lacking(String text) {
    return real.lacking(text);
  }

  @Override
  public Optional<ColourImage> preview(PrintOrder order, int page, int longest) throws IOException {
    return real.preview(order, page, longest);
  }

  @Override
  public PrintOutcome save(PrintOrder order, Outgoing out) throws IOException {
    return real.save(order, out);
  }

  @Override
  public PrintOutcome print(PrintOrder order) throws IOException {
    Path sheet = folder.resolve("printed-" + (sheets.size() + 1) + ".pdf");
    sheets.add(sheet);
    return real.save(order, Outgoing.to(sheet));
  }

  @Override
  public PagePicture previewFile(Path pdf, int page, int longest) throws IOException {
    return real.previewFile(pdf, page, longest);
  }

  @Override
  public PrintOutcome printFile(Path pdf, String title) throws IOException {
    throw new IOException("No printer is here.");
  }
}
