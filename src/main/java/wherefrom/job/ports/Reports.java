package wherefrom.job.ports;

import java.io.IOException;
import wherefrom.files.Outgoing;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.pages.ToFitSheet;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.shop.ShopSlip;

/** What is written for other people: the build record and the machine-shop slip. */
public interface Reports {

  /**
   * Writes the build record as PDF.
   *
   * @throws IOException with a plain sentence when it cannot be written
   */
  void writeRecord(BuildRecord record, PaperSize paper, Outgoing pdf) throws IOException;

  /** Writes the build record as comma-separated values, table under table. */
  void writeTables(BuildRecord record, Outgoing csv) throws IOException;

  /** Writes a table for a spreadsheet: comma-separated values in UTF-8, which it says itself. */
  void writeTable(TidyTable table, Outgoing csv) throws IOException;

  /** Writes the slip of a visit as PDF. */
  void writeSlip(ShopSlip slip, PaperSize paper, Outgoing pdf) throws IOException;

  /** Writes the plan to lay the parts on as PDF, drawn as large as the paper allows. */
  void writeBenchPlan(ToFitSheet plan, PaperSize paper, Outgoing pdf) throws IOException;

  /** Writes the plan of racks as PDF: a field for each part, in the engine's order. */
  void writeRackPlan(ToFitSheet plan, PaperSize paper, Outgoing pdf) throws IOException;

  /** Writes the sheet of parts still to fit as PDF, each with a box to tick. */
  void writeToFit(ToFitSheet plan, PaperSize paper, Outgoing pdf) throws IOException;
}
