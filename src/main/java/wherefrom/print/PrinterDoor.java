package wherefrom.print;

import java.awt.print.Pageable;
import java.io.IOException;

/** The way to the system's printers. */
interface PrinterDoor {

  /** What came of asking the person. */
  enum Answer {
    PRINTED,
    CANCELLED,
    NO_DISPLAY,
    NO_PRINTER
  }

  /**
   * Opens the printer dialog and prints.
   *
   * @param title what the printer's list shows
   * @throws IOException when the printer gives up
   */
  Answer print(Pageable pages, String title) throws IOException;
}
