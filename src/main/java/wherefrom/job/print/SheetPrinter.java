package wherefrom.job.print;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import wherefrom.files.Outgoing;
import wherefrom.job.image.ColourImage;

/** Prints tags and cards on label stock, and finished files. */
public interface SheetPrinter {

  /** The ready stocks, by name. */
  List<Stock> listStocks();

  /** A ready stock by its name, or the user's own by the path of its file. */
  StockChoice findStock(String nameOrFile);

  /**
   * What of a text no font of the program has, each sign once; a question mark would stand for it
   * on paper. Empty where all of it prints.
   */
  String lacking(String text);

  /**
   * A picture of a page, with the edges of its labels drawn and those crossed out that are used up.
   * Call it off the window's thread.
   *
   * @param page counted from 1
   * @param longest what its longer side has, in pixels
   * @return empty where the order cannot be printed, or has no such page
   * @throws IOException when the page cannot be drawn
   */
  Optional<ColourImage> preview(PrintOrder order, int page, int longest) throws IOException;

  /**
   * Writes the pages as PDF.
   *
   * @throws IOException with a plain sentence when it cannot be written
   */
  PrintOutcome save(PrintOrder order, Outgoing pdf) throws IOException;

  /**
   * Prints through the system's printer dialog, which it opens and waits for; call it off the
   * window's thread.
   *
   * @throws IOException when the printer gives up
   */
  PrintOutcome print(PrintOrder order) throws IOException;

  /**
   * A picture of a page of a finished PDF file. Call it off the window's thread.
   *
   * @param page counted from 1; behind the last one the last is drawn
   * @param longest what its longer side has, in pixels
   * @throws IOException when the file cannot be read or drawn
   */
  PagePicture previewFile(Path pdf, int page, int longest) throws IOException;

  /**
   * A drawn page.
   *
   * @param page which one it is, counted from 1
   * @param pages how many there are
   */
  record PagePicture(int page, int pages, ColourImage picture) {}

  /**
   * Prints a finished PDF file as it is, through the system's printer dialog; call it off the
   * window's thread.
   *
   * @param title what the printer's list shows
   * @throws IOException when the file cannot be read or the printer gives up
   */
  PrintOutcome printFile(Path pdf, String title) throws IOException;
}
