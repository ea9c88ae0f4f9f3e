package wherefrom.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.ReadyLayouts;
import wherefrom.files.Outgoing;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.print.PrintOrder;
import wherefrom.job.print.PrintSetup;
import wherefrom.job.print.TagFace;
import wherefrom.job.print.TagFaces;
import wherefrom.job.print.Unprintable;
import wherefrom.job.record.BuildRecord;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.report.FileReports;

/** Names in other scripts on sheets and in the build record, read back from the file. */
class OtherScriptsTest {
  private static final String NAME = "Łukasz Ωmega Двигатель";

  @TempDir Path folder;

  private final PdfSheetPrinter printer = new PdfSheetPrinter();

  private static PrintOrder order(String name) {
    Part part = new Part(12, Place.find("pushrod@3EX").orElseThrow(), 1, 1, false);
    TagFace face = TagFaces.part(part, 4711, ReadyLayouts.find("v8-odd-even").orElseThrow(), name);
    return PrintOrder.of(name, List.of(face), PrintSetup.on("a4-3x8-63.5x33.9"));
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      for (PDPage page : document.getPages()) {
        for (COSName font : page.getResources().getFontNames()) {
          assertThat(page.getResources().getFont(font).isEmbedded()).isTrue();
        }
      }
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void aTagAndItsSheetsTitleShowThem() throws IOException {
    Path pdf = folder.resolve("tags.pdf");
    printer.save(order(NAME), Outgoing.replacing(pdf));
    String text = text(pdf);
    assertThat(text.split(NAME, -1)).as("on the tag and in the margin").hasSize(3);
    assertThat(text).doesNotContain("?");
    assertThat(Unprintable.warning(printer, order(NAME))).isEmpty();
  }

  @Test
  void theBuildRecordShowsThem() throws IOException {
    Path pdf = folder.resolve("record.pdf");
    LocalDate day = LocalDate.parse("2026-03-04");
    RecordSection section =
        new RecordSection(
            RecordTable.SEEN,
            List.of("what"),
            List.of(new RecordSection.Row(List.of("изношен, Ψ"), true)),
            "");
    BuildRecord record =
        new BuildRecord(NAME, "V8", day, day, List.of(section), List.of(), List.of());
    new FileReports().writeRecord(record, PaperSize.A4, Outgoing.replacing(pdf));
    assertThat(text(pdf)).contains("BUILD RECORD\n" + NAME, "изношен, Ψ").doesNotContain("?");
    assertThat(Unprintable.warning(printer, record)).isEmpty();
  }

  @Test
  void whatCannotBePrintedIsSaidBefore() {
    assertThat(Unprintable.warning(printer, order("東京 V8")))
        .contains(
            "\"東京 V8\" does not print whole: a question mark will stand for 東 京. Latin, Greek"
                + " and Cyrillic letters print. Use those, or write it by hand.");
  }
}
