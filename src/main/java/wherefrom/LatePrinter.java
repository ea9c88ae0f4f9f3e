package wherefrom;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import wherefrom.files.Outgoing;
import wherefrom.job.image.ColourImage;
import wherefrom.job.print.PrintOrder;
import wherefrom.job.print.PrintOutcome;
import wherefrom.job.print.SheetPrinter;
import wherefrom.job.print.Stock;
import wherefrom.job.print.StockChoice;

/** A printer that is made when it is first used: reading the label stock takes time. */
final class LatePrinter implements SheetPrinter {
  private final Supplier<SheetPrinter> printer;

  LatePrinter(Supplier<SheetPrinter> make) {
    printer = new Lazy<>(make);
  }

  @Override
  public List<Stock> listStocks() {
    return printer.get().listStocks();
  }

  @Override
  public StockChoice findStock(String nameOrFile) {
    return printer.get().findStock(nameOrFile);
  }

  @Override
  public String lacking(String text) {
    return printer.get().lacking(text);
  }

  @Override
  public Optional<ColourImage> preview(PrintOrder order, int page, int longest) throws IOException {
    return printer.get().preview(order, page, longest);
  }

  @Override
  public PrintOutcome save(PrintOrder order, Outgoing pdf) throws IOException {
    return printer.get().save(order, pdf);
  }

  @Override
  public PrintOutcome print(PrintOrder order) throws IOException {
    return printer.get().print(order);
  }

  @Override
  public PagePicture previewFile(Path pdf, int page, int longest) throws IOException {
    return printer.get().previewFile(pdf, page, longest);
  }

  @Override
  public PrintOutcome printFile(Path pdf, String title) throws IOException {
    return printer.get().printFile(pdf, title);
  }
}
