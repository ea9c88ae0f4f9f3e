package wherefrom.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.print.PrintOrder;
import wherefrom.job.print.PrintSetup;
import wherefrom.job.print.TagFace;
import wherefrom.job.print.TagFaces;
import wherefrom.parts.Part;
import wherefrom.parts.Place;

/** A thousand tags to PDF against a thousand plain text labels with the same library and font. */
@Tag("bench")
class SheetBench {
  private static final int TAGS = 1_000;
  private static final int RUNS = 15;

  /** Both are compiled by the Java machine before they are timed. */
  private static final int WARM_UPS = 10;

  private static final double GOAL = 3;
  private static final int PER_PAGE = 24;

  private interface Job {
    int run() throws IOException;
  }

  @Test
  void aThousandTagsTakeAtMostThreeTimesAThousandPlainLabels() throws IOException {
    List<TagFace> faces = faces();
    LabelStock stock = ((StockReading.Good) StockShelf.ofReady().find("a4-3x8-63.5x33.9")).stock();
    double[] ratios = new double[RUNS];
    double[] tags = new double[RUNS];
    for (int run = -WARM_UPS; run < RUNS; run++) {
      double plain = milliseconds(() -> plainLabels(faces));
      double ours = milliseconds(() -> tags(stock, faces));
      if (run >= 0) {
        ratios[run] = ours / plain;
        tags[run] = ours;
      }
    }
    Arrays.sort(ratios);
    Arrays.sort(tags);
    System.out.printf(
        Locale.ROOT,
        "1,000 tags: median %.0f ms, %.2f times plain labels (%.2f to %.2f)%n",
        tags[RUNS / 2],
        ratios[RUNS / 2],
        ratios[0],
        ratios[RUNS - 1]);
    assertThat(ratios[RUNS / 2]).isLessThanOrEqualTo(GOAL);
  }

  private static List<TagFace> faces() {
    List<Place> places = SampleTags.places();
    List<TagFace> faces = new ArrayList<>();
    for (int item = 1; item <= TAGS; item++) {
      Part part = new Part(item, places.get(item % places.size()), 1, 1, false);
      faces.add(
          TagFaces.part(
              part,
              SampleTags.ENGINE,
              ReadyLayouts.find("v8-odd-even").orElseThrow(),
              SampleTags.JOB));
    }
    return faces;
  }

  private static double milliseconds(Job job) throws IOException {
    long start = System.nanoTime();
    assertThat(job.run()).isGreaterThan(10_000);
    return (System.nanoTime() - start) / 1e6;
  }

  private static int tags(LabelStock stock, List<TagFace> faces) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PdfPages pages = new PdfPages("Tags")) {
      LabelPlan plan = LabelPlan.find(stock, stock.dpi()).orElseThrow();
      PrintOrder order = PrintOrder.of("Tags", faces, PrintSetup.on(stock.name()));
      new TagSheets(stock, plan, order).draw(pages);
      pages.write(out);
    }
    return out.size();
  }

  /** The same words, five lines a label, 24 labels a page, nothing else. */
  private static int plainLabels(List<TagFace> faces) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument pdf = new PDDocument();
        InputStream in =
            SheetBench.class.getResourceAsStream("/wherefrom/fonts/B612-Regular.ttf")) {
      PDFont font = PDType0Font.load(pdf, in, true);
      for (int from = 0; from < faces.size(); from += PER_PAGE) {
        PDPage page = new PDPage(PDRectangle.A4);
        pdf.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(pdf, page)) {
          for (int at = from; at < Math.min(faces.size(), from + PER_PAGE); at++) {
            plainLabel(content, font, faces.get(at), at - from);
          }
        }
      }
      pdf.save(out);
    }
    return out.size();
  }

  private static void plainLabel(PDPageContentStream content, PDFont font, TagFace face, int label)
      throws IOException {
    content.beginText();
    content.setFont(font, 12);
    content.setLeading(14);
    content.newLineAtOffset(20 + label % 3 * 190, 800 - label / 3 * 96);
    for (String line :
        List.of(face.figures(), face.kind(), face.words(), face.jobName(), face.code().typed())) {
      content.showText(line);
      content.newLine();
    }
    content.endText();
  }
}
