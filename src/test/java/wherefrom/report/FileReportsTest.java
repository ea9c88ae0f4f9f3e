package wherefrom.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.files.Csv;
import wherefrom.files.Outgoing;
import wherefrom.files.Stopping;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.record.BuildRecord;

class FileReportsTest {
  @TempDir Path folder;

  private final FileReports reports = new FileReports();

  private static BuildRecord record(int rows) {
    List<RecordSection.Row> many = new ArrayList<>();
    for (int at = 1; at <= rows; at++) {
      many.add(
          new RecordSection.Row(
              List.of("row " + at, "words that are long enough to be wrapped ".repeat(4), "end"),
              at == 1));
    }
    return new BuildRecord(
        "Farm engine",
        "V8, odd and even banks",
        LocalDate.parse("2026-01-02"),
        LocalDate.parse("2026-03-04"),
        List.of(
            new RecordSection(
                RecordTable.NOT_CHECKED, List.of("what", "because", "x"), many, "Nothing."),
            new RecordSection(RecordTable.MONEY, List.of("a"), List.of(), "No cost was noted.")),
        List.of(),
        List.of());
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void everyRowAndWhatWasNotCheckedStandsInThePdf() throws IOException {
    Path pdf = folder.resolve("record.pdf");
    reports.writeRecord(record(120), PaperSize.A4, Outgoing.replacing(pdf));
    String text = text(pdf);
    assertThat(text)
        .contains("BUILD RECORD", "Farm engine", "To fit, or not checked", "No cost was noted.")
        .contains("outranks this");
    for (int at = 1; at <= 120; at++) {
      assertThat(text).contains("row " + at + " ");
    }
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      assertThat(document.getNumberOfPages()).isGreaterThan(1);
      document
          .getPage(0)
          .getResources()
          .getFontNames()
          .forEach(
              name -> {
                try {
                  assertThat(document.getPage(0).getResources().getFont(name).isEmbedded())
                      .isTrue();
                } catch (IOException e) {
                  throw new java.io.UncheckedIOException(e);
                }
              });
    }
  }

  @Test
  void aRecordThatIsStoppedLeavesNoFile() {
    Path pdf = folder.resolve("record.pdf");
    assertThatThrownBy(
            () ->
                Stopping.after(
                    2, () -> reports.writeRecord(record(3), PaperSize.A4, Outgoing.to(pdf))))
        .isInstanceOf(CancellationException.class);
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void theTablesComeBackFromTheCsv() throws IOException {
    Path csv = folder.resolve("record.csv");
    reports.writeTables(record(3), Outgoing.replacing(csv));
    List<List<String>> rows = Csv.read(Files.readString(csv));
    assertThat(rows.get(0))
        .containsExactly("build record", "Farm engine", "V8, odd and even banks", "2026-03-04");
    assertThat(rows).contains(List.of("NOT CHECKED"), List.of("what", "because", "x"));
    assertThat(rows.get(rows.size() - 1)).containsExactly(BuildRecord.OUTRANKED);
  }

  @Test
  void charactersThatTheFontLacksDoNotStopTheReport() throws IOException {
    Path pdf = folder.resolve("odd.pdf");
    BuildRecord odd =
        new BuildRecord(
            "エンジン \u0007", "x", LocalDate.EPOCH, LocalDate.EPOCH, List.of(), List.of(), List.of());
    reports.writeRecord(odd, PaperSize.A4, Outgoing.replacing(pdf));
    assertThat(text(pdf)).contains("BUILD RECORD\n????");
  }
}
