package wherefrom.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wherefrom.files.Outgoing;
import wherefrom.job.BenchJob;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.ToFit;

/** The longest name of a job stays on its line: before what stands beside it, and on the sheet. */
class LongNamesTest {
  private static final String NAME =
      "The other launch of the two at the lower pier, engine from the workshop sale, no. 12";

  @TempDir Path folder;

  private final FileReports reports = new FileReports();
  private final ToFit plan = named(ToFit.of(BenchJob.v8().job.state()));

  private static ToFit named(ToFit plan) {
    return new ToFit(NAME.substring(0, JobOpened.MOST_LETTERS), plan.engine(), plan.places());
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

  private static void inOrder(Path pdf) throws IOException {
    List<TextPosition> letters = letters(pdf);
    assertThat(letters).hasSizeGreaterThan(100);
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

  /** Of the first page: what stands beside a name is on every one alike. */
  private static List<TextPosition> letters(Path pdf) throws IOException {
    List<TextPosition> letters = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDFTextStripper stripper =
          new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> written) {
              letters.addAll(written);
            }
          };
      stripper.setEndPage(1);
      stripper.getText(document);
    }
    return letters;
  }
}
