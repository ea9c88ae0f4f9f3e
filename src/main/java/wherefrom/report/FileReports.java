package wherefrom.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import wherefrom.files.Csv;
import wherefrom.files.Outgoing;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.pages.ToFitSheet;
import wherefrom.job.ports.Reports;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.shop.ShopSlip;

/** Reports written to files. */
public final class FileReports implements Reports {
  /** Without it some spreadsheets take UTF-8 for the letters of their own country. */
  private static final String BYTE_ORDER = "\uFEFF";

  @Override
  public void writeRecord(BuildRecord record, PaperSize size, Outgoing pdf) throws IOException {
    try (RecordPaper paper = new RecordPaper(record, size)) {
      paper.write(pdf);
    }
  }

  @Override
  public void writeTables(BuildRecord record, Outgoing csv) throws IOException {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("build record", record.job(), record.engine(), record.asOf().toString()));
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
  public void writeSlip(ShopSlip slip, PaperSize paper, Outgoing pdf) throws IOException {
    SlipPaper.write(slip, paper, pdf);
  }

  @Override
  public void writeBenchPlan(ToFitSheet plan, PaperSize paper, Outgoing pdf) throws IOException {
    PlanPaper.bench(plan, paper, pdf);
  }

  @Override
  public void writeRackPlan(ToFitSheet plan, PaperSize paper, Outgoing pdf) throws IOException {
    PlanPaper.rack(plan, paper, pdf);
  }

  @Override
  public void writeToFit(ToFitSheet plan, PaperSize paper, Outgoing pdf) throws IOException {
    ToFitPaper.write(plan, paper, pdf);
  }
}
