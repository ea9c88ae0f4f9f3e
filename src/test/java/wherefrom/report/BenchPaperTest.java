package wherefrom.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wherefrom.files.Outgoing;
import wherefrom.inspection.Subject;
import wherefrom.job.BenchJob;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.ToFitSheet;
import wherefrom.job.shop.MachineShop;
import wherefrom.job.shop.ShopSlip;
import wherefrom.parts.Place;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.ShopWork;

/** The sheets for the bench and the shop, read and measured. */
class BenchPaperTest {
  private static final double MM = 72 / 25.4;

  @TempDir Path folder;

  private final BenchJob bench = BenchJob.v8();
  private final FileReports reports = new FileReports();

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  private void line(String what, int count, String wanted, String size, ShopWork work) {
    boolean sized = !size.isEmpty();
    bench.record(
        new ShopLineAdded(
            1,
            new MachineShop(bench.job).findVisit(1).map(v -> v.lines().size()).orElse(0) + 1,
            what,
            count,
            wanted,
            sized ? Optional.of(Amount.of(size, Unit.INCH)) : Optional.empty(),
            sized ? Optional.of(Amount.of("0.0005", Unit.INCH)) : Optional.empty(),
            !sized,
            work,
            List.of(),
            Optional.empty()));
  }

  private ShopSlip slip() {
    new MachineShop(bench.job).send(1, List.of(bench.item("rod-cap@R3L")), "check for round");
    line("block", 1, "bore all eight", "3.8900", ShopWork.BORE);
    line("main caps", 5, "stay with the block", "", ShopWork.OTHER);
    return ShopSlip.of(bench.job, new MachineShop(bench.job).findVisit(1).orElseThrow());
  }

  @Test
  void onePieceIsNotMany() {
    assertThat(SlipPaper.inAll(1)).isEqualTo("1 piece in all");
    assertThat(SlipPaper.inAll(7)).isEqualTo("7 pieces in all");
  }

  @Test
  void aSlipNamesCountsSizesSurfacesAndWhatMustNotGetLost() throws IOException {
    Path pdf = folder.resolve("slip.pdf");
    ShopSlip slip = slip();
    reports.writeSlip(slip, PaperSize.A4, Outgoing.to(pdf));
    assertThat(text(pdf))
        .contains("MACHINE SHOP, VISIT 1", "7 pieces in all", "3.8900 in, within 0.0005 in")
        .contains("rod 3, cap", slip.rows().get(0).tag(), "check for round")
        .contains("B1 B2 B3 B4 B5 B6 B7 B8")
        .contains("promised for", "price agreed", "signature", "measured on return")
        .contains("DO NOT LOSE", "5 main caps")
        .contains("1 / 1");
  }

  @Test
  void theSlipDrawsThePlaceOfWhatGoesAndNoOther() {
    ShopSlip slip = slip();
    assertThat(slip.engine().states().keySet())
        .containsExactly(Place.find("rod-cap@R3L").orElseThrow());
    assertThat(slip.worked())
        .extracting(Subject.AFeature::where)
        .as("the bores of the block that goes")
        .containsExactly("B1", "B2", "B3", "B4", "B5", "B6", "B7", "B8");
  }

  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void theBenchPlanHasItsPapersSizeAndARuleOf100Mm(PaperSize paper) throws IOException {
    Path pdf = folder.resolve("bench.pdf");
    reports.writeBenchPlan(ToFitSheet.of(bench.job.state()), paper, Outgoing.to(pdf));
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      assertThat(document.getNumberOfPages()).isEqualTo(2);
      double wide = document.getPage(0).getMediaBox().getWidth() / MM;
      double high = document.getPage(0).getMediaBox().getHeight() / MM;
      assertThat(wide).isCloseTo(paper.height(), within(0.01));
      assertThat(high).isCloseTo(paper.width(), within(0.01));
      BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 254, ImageType.GRAY);
      int y = 140;
      int right = (int) Math.round((wide - 10) * 10);
      assertThat(isInk(page, right - 5, y)).isTrue();
      assertThat(isInk(page, right - 995, y)).as("99.5 mm").isTrue();
      assertThat(isInk(page, right - 1010, y)).as("101 mm").isFalse();
    }
  }

  private static boolean isInk(BufferedImage page, int x, int y) {
    return (page.getRGB(x, y) & 0xFF) < 128;
  }

  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void theRackHasAFieldForEveryPlace(PaperSize paper) throws IOException {
    Path pdf = folder.resolve("rack.pdf");
    ToFitSheet plan = ToFitSheet.of(bench.job.state());
    reports.writeRackPlan(plan, paper, Outgoing.to(pdf));
    String text = text(pdf);
    plan.engine().states().keySet().forEach(place -> assertThat(text).contains(place.figures()));
    plan.engine().kinds().forEach(kind -> assertThat(text).contains(kind.plural()));
  }

  @Test
  void whatIsFittedIsNoMoreOnTheSheet() throws IOException {
    Place place = Place.find("pushrod@3EX").orElseThrow();
    bench.record(new PartFitted(bench.item("pushrod@3EX"), place, "", Optional.empty()));
    ToFitSheet plan = ToFitSheet.of(bench.job.state());
    int all = bench.job.state().places().size();
    assertThat(plan.places()).noneMatch(open -> open.place().equals(place));
    Path pdf = folder.resolve("fit.pdf");
    reports.writeToFit(plan, PaperSize.LETTER, Outgoing.to(pdf));
    String text = text(pdf);
    assertThat(text).contains(plan.places().size() + " of " + all + " places");
    assertThat(text).doesNotContain("cylinder 3, exhaust, pushrod");
    plan.places().forEach(open -> assertThat(text).contains(open.tag()));
  }
}
