package wherefrom.print;

import java.awt.GraphicsEnvironment;
import java.awt.print.Pageable;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;

/** The printers that the system knows, through its dialog. */
final class SystemPrinters implements PrinterDoor {

  @Override
  public Answer print(Pageable pages, String title) throws IOException {
    if (GraphicsEnvironment.isHeadless()) {
      return Answer.NO_DISPLAY;
    }
    if (PrinterJob.lookupPrintServices().length == 0) {
      return Answer.NO_PRINTER;
    }
    PrinterJob job = PrinterJob.getPrinterJob();
    job.setJobName(title);
    job.setPageable(pages);
    if (!job.printDialog()) {
      return Answer.CANCELLED;
    }
    try {
      job.print();
    } catch (PrinterException e) {
      throw new IOException("The printer gave up: " + e.getMessage(), e);
    }
    return Answer.PRINTED;
  }
}
