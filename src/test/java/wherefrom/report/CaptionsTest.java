package wherefrom.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.files.Outgoing;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.RecordPicture;
import wherefrom.pdf.Book;

/** Words below photographs: each under its own, and all of them there. */
class CaptionsTest {
  private static final double MM = 72 / 25.4;
  private static final double GAP = 4;
  private static final String TITLE = "cylinder 3, exhaust, the pushrod that was laid up crooked";
  private static final String CAPTION =
      "upper tip, seen against the light, with the step that a nail finds just below its rim and"
          + " averyveryverylongwordwithoutasinglespaceinitthatnolinecanhold, 2026-05-04";

  @TempDir Path folder;

  private List<TextPosition> letters(List<RecordPicture> pictures, int page) throws IOException {
    Path pdf = folder.resolve("pictures.pdf");
    try (Book book = new Book("Pictures")) {
      new PictureRows(new Flow(book, PaperSize.A4)).draw(pictures);
      book.save(Outgoing.replacing(pdf));
    }
    return Letters.of(pdf, page);
  }

  private List<RecordPicture> pictures(int many) {
    return IntStream.range(0, many)
        .mapToObj(at -> RecordPicture.of(TITLE, CAPTION, folder.resolve(at + ".png")))
        .toList();
  }

  @Test
  void longWordsStayUnderTheirPictureAndNoneIsLost() throws IOException {
    List<TextPosition> letters = letters(pictures(3), 1);
    double wide = (Flow.WIDE - 2 * GAP) / 3;
    for (TextPosition letter : letters) {
      double from = letter.getXDirAdj() / MM - Flow.LEFT;
      int column = (int) Math.floor(from / (wide + GAP) + 1e-6);
      double end = from + letter.getWidthDirAdj() / MM - column * (wide + GAP);
      assertThat(column).as("%s", letter).isBetween(0, 2);
      assertThat(end).as("%s of column %d", letter, column).isLessThanOrEqualTo(wide + 0.01);
    }
    for (int column = 0; column < 3; column++) {
      double left = (Flow.LEFT + column * (wide + GAP)) * MM - 0.1;
      double right = left + wide * MM + 0.2;
      StringBuilder read = new StringBuilder();
      letters.stream()
          .filter(letter -> letter.getXDirAdj() >= left && letter.getXDirAdj() < right)
          .forEach(letter -> read.append(letter.getUnicode()));
      String all = TITLE + CAPTION + "(the picture file is missing or cannot be shown)";
      assertThat(read.toString().replaceAll("\\s", "")).isEqualTo(all.replaceAll("\\s", ""));
    }
  }

  /** A row whose words find no room goes to the next page whole. */
  @Test
  void noCaptionRunsOverTheFootOfThePage() throws IOException {
    List<RecordPicture> many = pictures(30);
    double foot = (PaperSize.A4.height() - 19) * MM;
    for (int page = 1; page <= 2; page++) {
      List<TextPosition> letters = letters(many, page);
      assertThat(letters).isNotEmpty();
      assertThat(letters).allSatisfy(at -> assertThat((double) at.getYDirAdj()).isLessThan(foot));
    }
  }
}
