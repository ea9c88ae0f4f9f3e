package wherefrom.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wherefrom.files.Outgoing;
import wherefrom.job.BenchJob;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.ToFitSheet;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.shop.MachineShop;
import wherefrom.job.shop.ShopSlip;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.ShopWork;

/** The longest name of a job stays on its line: before what stands beside it, and on the sheet. */
class LongNamesTest {
  private static final String NAME =
      "The other launch of the two at the lower pier, engine from the workshop sale, no. 12";

  @TempDir Path folder;

  private final FileReports reports = new FileReports();
  private final ToFitSheet plan = named(ToFitSheet.of(BenchJob.v8().job.state()));

  private static ToFitSheet named(ToFitSheet plan) {
    return new ToFitSheet(NAME.substring(0, JobOpened.MOST_LETTERS), plan.engine(), plan.places());
  }

  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void noLetterOfTheBenchPlanLiesOnAnother(PaperSize paper) throws IOException {
    Path pdf = folder.resolve("bench.pdf");
    reports.writeBenchPlan(plan, paper, Outgoing.to(pdf));
    inOrder(pdf);
  }

  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void noLetterOfTheListLiesOnAnother(PaperSize paper) throws IOException {
    Path pdf = folder.resolve("to-fit.pdf");
    reports.writeToFit(plan, paper, Outgoing.to(pdf));
    inOrder(pdf);
  }

  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void noLetterOfTheRackLiesOnAnother(PaperSize paper) throws IOException {
    Path pdf = folder.resolve("rack.pdf");
    reports.writeRackPlan(plan, paper, Outgoing.to(pdf));
    inOrder(pdf);
  }

  /** Job, parts and work, each as long as it can be; one word has no space to break at. */
  private static ShopSlip slip() {
    BenchJob bench = BenchJob.v8();
    String wanted = NAME + " " + "x".repeat(90);
    new MachineShop(bench.job).send(1, List.of(bench.item("rod-cap@R3L")), wanted);
    bench.record(
        new ShopLineAdded(
            1,
            1,
            NAME + " " + "y".repeat(90),
            999,
            wanted,
            Optional.of(Amount.of("3.8900", Unit.INCH)),
            Optional.of(Amount.of("0.0005", Unit.INCH)),
            true,
            ShopWork.BORE,
            List.of(),
            Optional.empty()));
    ShopSlip slip = ShopSlip.of(bench.job, new MachineShop(bench.job).findVisit(1).orElseThrow());
    String name = NAME.substring(0, JobOpened.MOST_LETTERS);
    return new ShopSlip(name, slip.visit(), slip.day(), slip.engine(), slip.worked(), slip.rows());
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"A4", "LETTER"})
  void noLetterOfTheSlipLiesOnAnotherAndNoneIsLost(PaperSize paper) throws IOException {
    Path pdf = folder.resolve("slip.pdf");
    reports.writeSlip(slip(), paper, Outgoing.to(pdf));
    StringBuilder all = new StringBuilder();
    for (int page = 1; page <= pages(pdf); page++) {
      inOrder(pdf, page);
      Letters.of(pdf, page).forEach(letter -> all.append(letter.getUnicode()));
    }
    assertThat(count(all, 'x')).isGreaterThanOrEqualTo(180);
    assertThat(count(all, 'y')).isGreaterThanOrEqualTo(90);
  }

  private static long count(CharSequence all, char letter) {
    return all.chars().filter(one -> one == letter).count();
  }

  /** Name, program and number of the page share the foot. */
  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"A4", "LETTER"})
  void coverAndFeetOfTheRecordHaveRoomForEachOther(PaperSize paper) throws IOException {
    BuildRecord record = BuildRecord.of(BenchJob.v8().job);
    String name = NAME.substring(0, JobOpened.MOST_LETTERS);
    BuildRecord named =
        new BuildRecord(
            name,
            record.engine() + " " + NAME,
            record.begun(),
            record.asOf(),
            record.sections(),
            record.plots(),
            record.pictures(),
            record.sheets());
    Path pdf = folder.resolve("record.pdf");
    reports.writeRecord(named, paper, Outgoing.to(pdf));
    int pages = pages(pdf);
    for (int page = 1; page <= pages; page++) {
      double foot = (paper.height() - 17) * 72 / 25.4;
      List<TextPosition> feet =
          new ArrayList<>(
              Letters.of(pdf, page).stream().filter(it -> it.getYDirAdj() > foot).toList());
      assertThat(read(feet)).contains("The other launch", page + " / " + pages);
      inOrder(feet);
    }
    List<TextPosition> head =
        new ArrayList<>(
            Letters.of(pdf, 1).stream().filter(it -> it.getYDirAdj() < 46 * 72 / 25.4).toList());
    assertThat(read(head)).contains("The other launch", "BUILD RECORD");
    inOrder(head);
  }

  private static String read(List<TextPosition> letters) {
    StringBuilder read = new StringBuilder();
    letters.forEach(letter -> read.append(letter.getUnicode()));
    return read.toString();
  }

  private static int pages(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return document.getNumberOfPages();
    }
  }

  /** Of the first page: what stands beside a name is on every one alike. */
  private static void inOrder(Path pdf) throws IOException {
    inOrder(pdf, 1);
  }

  private static void inOrder(Path pdf, int page) throws IOException {
    List<TextPosition> letters = Letters.of(pdf, page);
    assertThat(letters).hasSizeGreaterThan(40);
    inOrder(letters);
  }

  private static void inOrder(List<TextPosition> letters) {
    letters.sort(
        Comparator.comparingInt((TextPosition it) -> Math.round(it.getYDirAdj()))
            .thenComparing(TextPosition::getXDirAdj));
    for (int at = 1; at < letters.size(); at++) {
      TextPosition before = letters.get(at - 1);
      TextPosition letter = letters.get(at);
      assertThat(letter.getXDirAdj() + letter.getWidthDirAdj())
          .as("the edge of the sheet")
          .isLessThanOrEqualTo(letter.getPageWidth());
      if (Math.round(before.getYDirAdj()) == Math.round(letter.getYDirAdj())) {
        assertThat(before.getXDirAdj() + before.getWidthDirAdj())
            .as(before + " before " + letter)
            .isLessThanOrEqualTo(letter.getXDirAdj() + 0.5f);
      }
    }
  }
}
