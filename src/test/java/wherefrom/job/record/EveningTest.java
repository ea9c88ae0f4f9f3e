package wherefrom.job.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.ReadyLayouts;
import wherefrom.files.Outgoing;
import wherefrom.inspection.Look;
import wherefrom.job.MemoryLogbook;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.PhotoAdded;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.RecordEvent;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.shop.MachineShop;
import wherefrom.job.shop.ShopSlip;
import wherefrom.job.torque.CardTyped;
import wherefrom.job.torque.TorqueBook;
import wherefrom.logbook.PhotoFiles;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;
import wherefrom.report.FileReports;
import wherefrom.ui.app.Dates;
import wherefrom.workings.torque.BoltPattern;

/**
 * Who works at half past nine in the evening reads that day on paper, though the day has changed
 * where the clocks of the world are set by; so does who works before eight in the morning east.
 */
class EveningTest {
  private static final ZoneId WEST = ZoneId.of("America/New_York");
  private static final ZoneId EAST = ZoneId.of("Asia/Tokyo");

  /** 21:30 on 4 May in the west, 10:30 on 5 May in the east. */
  private static final Instant LATE = Instant.parse("2026-05-05T01:30:00Z");

  private static final String NAME = "0".repeat(64) + ".png";

  @TempDir Path folder;
  private OpenJob job;

  @BeforeEach
  void anEveningInTheWest() {
    job = at(WEST);
  }

  private static OpenJob at(ZoneId zone) {
    MemoryLogbook logbook = new MemoryLogbook();
    var layout = ReadyLayouts.find("inline-4").orElseThrow();
    logbook.append(
        LATE, JobOpened.of("Launch", 1_234_567, layout, PartKind.all(), UnitSystem.INCH));
    OpenJob job = new OpenJob(logbook, Clock.fixed(LATE, zone));
    job.state().parts().forEach(part -> job.record(new PartOut(part.part().item())));
    job.record(new NoteAdded(0, "stood in a boathouse"));
    job.record(new FeatureLooked("lobe@1IN", "lobe-look", Look.SUSPECT, "edge broken"));
    job.record(new PhotoAdded(0, NAME, ""));
    new MachineShop(job).send(1, List.of(pushrod(job)), "check for round");
    TorqueBook book = new TorqueBook(job);
    book.begin(
        new CardTyped(
            "main caps",
            1,
            2,
            BoltPattern.ofRectangle(1, 2).positions(),
            "",
            "oiled",
            List.of("20 N·m"),
            "manual, p. 3"));
    book.tick(1, 1, "A. B.", false);
    return job;
  }

  private static int pushrod(OpenJob job) {
    return job.state().parts().stream()
        .map(record -> record.part())
        .filter(part -> part.kind() == PartKind.PUSHROD)
        .mapToInt(Part::item)
        .findFirst()
        .orElseThrow();
  }

  private static Stream<String> cells(OpenJob job) {
    return BuildRecord.of(job, new PhotoFiles()).sections().stream()
        .flatMap(section -> section.rows().stream())
        .flatMap(row -> row.cells().stream());
  }

  @Test
  void everyTableOfTheRecordHasTheDayOfTheBench() {
    assertThat(cells(job).filter(cell -> cell.contains("2026-05-05"))).isEmpty();
    BuildRecord record = BuildRecord.of(job, new PhotoFiles());
    for (RecordTable table :
        List.of(RecordTable.PARTS, RecordTable.SEEN, RecordTable.PHOTOGRAPHS)) {
      assertThat(record.find(table).rows())
          .as(table.title())
          .anyMatch(row -> row.cells().contains("2026-05-04"));
    }
    assertThat(record.find(RecordTable.TORQUE_CARDS).rows().get(0).cells())
        .contains("2026-05-04 21:30");
    assertThat(cells(at(EAST)).filter(cell -> cell.startsWith("2026-05-05"))).isNotEmpty();
    assertThat(cells(at(EAST)).filter(cell -> cell.contains("2026-05-04"))).isEmpty();
  }

  @Test
  void theWireOfEachCylinderHasIt() {
    BuildRecord record = BuildRecord.of(job);
    assertThat(record.sheets().orElseThrow().cylinders())
        .allSatisfy(
            sheet ->
                assertThat(sheet.events())
                    .extracting(RecordEvent::day)
                    .containsExactly(LocalDate.of(2026, 5, 4)));
    assertThat(BuildRecord.of(job, new PhotoFiles()).pictures())
        .extracting(picture -> picture.caption())
        .containsExactly("2026-05-04");
  }

  private String printed(Path pdf) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setEndPage(1);
      return stripper.getText(document).replaceAll("\\s+", " ");
    }
  }

  /** The window says the very same day: it asks the same clock. */
  @Test
  void coverAndSlipSayWhatTheWindowSays() throws Exception {
    Path cover = folder.resolve("record.pdf");
    new FileReports().writeRecord(BuildRecord.of(job), PaperSize.A4, Outgoing.to(cover));
    String window = Dates.ago(LATE, Clock.fixed(LATE, WEST));
    assertThat(window).isEqualTo("4 May 2026, today");
    assertThat(printed(cover)).contains(" 4 May 2026 ").doesNotContain("5 May");
    Path slip = folder.resolve("slip.pdf");
    ShopSlip sent = ShopSlip.of(job, new MachineShop(job).findVisit(1).orElseThrow());
    new FileReports().writeSlip(sent, PaperSize.A4, Outgoing.to(slip));
    assertThat(printed(slip)).contains("2026-05-04").doesNotContain("2026-05-05");
    Path csv = folder.resolve("record.csv");
    new FileReports().writeTables(BuildRecord.of(job), Outgoing.to(csv));
    assertThat(csv).content().contains("2026-05-04").doesNotContain("2026-05-05");
  }

  @Test
  void theCommandLineSaysItWithHowFarTheZoneIsOff() {
    assertThat(job.days().stamp(LATE)).isEqualTo("2026-05-04T21:30:00-04:00");
    assertThat(at(EAST).days().stamp(LATE)).isEqualTo("2026-05-05T10:30:00+09:00");
  }
}
