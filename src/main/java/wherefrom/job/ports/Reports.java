package wherefrom.job.ports;

import java.io.IOException;
import wherefrom.files.Outgoing;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.shop.ShopVisit;

/** What is written for other people: the build record and the machine-shop slip. */
public interface Reports {

  /**
   * Writes the build record as PDF.
   *
   * @throws IOException with a plain sentence when it cannot be written
   */
  void writeRecord(BuildRecord record, Outgoing pdf) throws IOException;

  /** Writes the build record as comma-separated values, table under table. */
  void writeTables(BuildRecord record, Outgoing csv) throws IOException;

  /** Writes a table for a spreadsheet: comma-separated values in UTF-8, which it says itself. */
  void writeTable(TidyTable table, Outgoing csv) throws IOException;

  /** Writes the slip of a visit as PDF. */
  void writeSlip(String jobName, ShopVisit visit, Outgoing pdf) throws IOException;
}
