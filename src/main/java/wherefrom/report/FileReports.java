package wherefrom.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import wherefrom.files.Csv;
import wherefrom.files.Outgoing;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.ports.Reports;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.shop.ShopVisit;
import wherefrom.pdf.TablePdf;

/** Reports written to files. */
public final class FileReports implements Reports {

  @Override
  public void writeRecord(BuildRecord record, Outgoing pdf) throws IOException {
    try (TablePdf out = new TablePdf("Build record: " + record.job())) {
      out.words(
          record.engine() + ", begun " + day(record.begun()) + ", as of " + day(record.asOf()));
      out.words(
          BuildRecord.OUTRANKED + " Rows in bold behind a black mark are open or not checked.");
      boolean first = true;
      for (RecordSection section : record.sections()) {
        if (first) {
          out.largeTable(section);
        } else {
          out.table(section);
        }
        first = false;
      }
      out.plots(record.plots());
      out.pictures(record.pictures());
      out.save(pdf);
    }
  }

  @Override
  public void writeTables(BuildRecord record, Outgoing csv) throws IOException {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("build record", record.job(), record.engine(), day(record.asOf())));
    for (RecordSection section : record.sections()) {
      rows.add(List.of(section.title()));
      rows.add(section.columns());
      section.rows().forEach(row -> rows.add(row.cells()));
    }
    rows.add(List.of(BuildRecord.OUTRANKED));
    byte[] bytes = Csv.write(rows).getBytes(StandardCharsets.UTF_8);
    csv.write(out -> out.write(bytes));
  }

  @Override
  public void writeSlip(String jobName, ShopVisit visit, Outgoing pdf) throws IOException {
    try (TablePdf out = new TablePdf("Machine shop, visit " + visit.number() + ": " + jobName)) {
      out.words(day(visit.sent()) + ", " + visit.pieces() + " pieces in all");
      for (RecordSection section : SlipTables.of(visit)) {
        out.table(section);
      }
      out.words(BuildRecord.OUTRANKED);
      out.save(pdf);
    }
  }

  private static String day(java.time.Instant time) {
    return time.toString().substring(0, 10);
  }
}
