package wherefrom.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import wherefrom.files.Csv;
import wherefrom.files.Outgoing;
import wherefrom.files.Progress;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.ports.Reports;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.shop.ShopVisit;
import wherefrom.pdf.TablePdf;

/** Reports written to files. */
public final class FileReports implements Reports {
  /** Without it some spreadsheets take UTF-8 for the letters of their own country. */
  private static final String BYTE_ORDER = "\uFEFF";

  @Override
  public void writeRecord(BuildRecord record, Outgoing pdf) throws IOException {
    try (RecordPaper paper = new RecordPaper(record)) {
      paper.write(pdf);
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
  public void writeTable(TidyTable table, Outgoing csv) throws IOException {
    List<List<String>> rows = new ArrayList<>();
    rows.add(table.columns());
    for (List<TidyCell> row : table.rows()) {
      rows.add(row.stream().map(TidyCell::text).toList());
    }
    byte[] bytes = (BYTE_ORDER + Csv.write(rows)).getBytes(StandardCharsets.UTF_8);
    csv.write(out -> out.write(bytes));
  }

  @Override
  public void writeSlip(String jobName, ShopVisit visit, Outgoing pdf) throws IOException {
    try (TablePdf out = new TablePdf("Machine shop, visit " + visit.number() + ": " + jobName)) {
      out.words(day(visit.sent()) + ", " + visit.pieces() + " pieces in all");
      List<RecordSection> tables = SlipTables.of(visit);
      for (int done = 0; done < tables.size(); done++) {
        out.table(tables.get(done));
        Progress.step(done + 1, tables.size());
      }
      out.words(BuildRecord.OUTRANKED);
      out.save(pdf);
    }
  }

  private static String day(java.time.Instant time) {
    return time.toString().substring(0, 10);
  }
}
