package wherefrom.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.image.ColourImage;
import wherefrom.job.print.Nudge;
import wherefrom.job.print.PrintOrder;
import wherefrom.job.print.PrintSetup;
import wherefrom.job.print.TagFace;
import wherefrom.job.print.TagFaces;
import wherefrom.parts.Part;
import wherefrom.parts.Place;

/** The picture of the first page: A4, 3 by 8 labels, at 4 pixels a millimetre. */
class SheetPreviewTest {
  private static final int LONGEST = 1188;
  private static final double PX = LONGEST / 297.0;
  private static final PrintSetup SHEET = PrintSetup.on("a4-3x8-63.5x33.9");

  private final PdfSheetPrinter printer = new PdfSheetPrinter();

  private static PrintOrder order(PrintSetup setup) {
    Part part = new Part(12, Place.find("pushrod@3EX").orElseThrow(), 1, 1, false);
    return PrintOrder.of(
        "Launch V8",
        List.of(
            TagFaces.part(part, 4711, ReadyLayouts.find("v8-odd-even").orElseThrow(), "Launch V8")),
        setup);
  }

  private ColourImage picture(PrintSetup setup) throws IOException {
    return printer.preview(order(setup), 1, LONGEST).orElseThrow();
  }

  /** How much black lies within a label, its edge left out; labels count from 1. */
  private static int black(ColourImage picture, int label) {
    int left = (int) ((7.25 + (label - 1) % 3 * 66.0 + 1) * PX);
    int top = (int) ((12.9 + (label - 1) / 3 * 33.9 + 1) * PX);
    int black = 0;
    for (int y = top; y < top + 31.9 * PX; y++) {
      for (int x = left; x < left + 61.5 * PX; x++) {
        black += (picture.pixels()[y * picture.width() + x] & 0xFF) < 64 ? 1 : 0;
      }
    }
    return black;
  }

  private static int leftmostBlack(ColourImage picture) {
    int top = (int) (15 * PX);
    for (int x = 0; x < picture.width(); x++) {
      for (int y = top; y < top + 28 * PX; y++) {
        if ((picture.pixels()[y * picture.width() + x] & 0xFF) < 64) {
          return x;
        }
      }
    }
    throw new AssertionError("nothing black");
  }

  @Test
  void itIsThePageWithItsTagOnTheFirstLabel() throws IOException {
    ColourImage picture = picture(SHEET);
    assertThat(picture.height()).isEqualTo(LONGEST);
    assertThat(picture.width()).isBetween(838, 842);
    assertThat(black(picture, 1)).isGreaterThan(2000);
    assertThat(black(picture, 2)).isZero();
  }

  @Test
  void aHalfUsedSheetShowsTheTagOnItsLabel() throws IOException {
    ColourImage picture = picture(SHEET.startingAt(5));
    assertThat(black(picture, 1)).isZero();
    assertThat(black(picture, 5)).isGreaterThan(2000);
    int crossed = picture.pixels()[(int) (20 * PX) * picture.width() + (int) (12 * PX)] & 0xFFFFFF;
    assertThat(crossed).as("used up").isEqualTo(0xd2cec4);
  }

  @Test
  void aMovedPrintIsSeenMoved() throws IOException {
    int unmoved = leftmostBlack(picture(SHEET));
    int moved = leftmostBlack(picture(SHEET.nudged(new Nudge(4, 0))));
    assertThat(moved - unmoved).as("2 mm").isBetween((int) (2 * PX) - 1, (int) (2 * PX) + 1);
  }

  @Test
  void everyPageCanBeLookedAtAndOnlyTheFirstIsHalfUsed() throws IOException {
    List<TagFace> faces = Collections.nCopies(26, (TagFace) order(SHEET).faces().get(0));
    PrintOrder two = PrintOrder.of("Launch V8", faces, SHEET.startingAt(2));
    ColourImage second = printer.preview(two, 2, LONGEST).orElseThrow();
    assertThat(black(second, 3)).isGreaterThan(2000);
    assertThat(black(second, 4)).isZero();
    int first = second.pixels()[(int) (20 * PX) * second.width() + (int) (12 * PX)] & 0xFFFFFF;
    assertThat(first).as("used up").isNotEqualTo(0xd2cec4);
    assertThat(printer.preview(two, 3, LONGEST)).isEmpty();
  }

  @Test
  void whatCannotBePrintedHasNoPicture() throws IOException {
    assertThat(printer.preview(order(SHEET.startingAt(25)), 1, LONGEST)).isEmpty();
    assertThat(printer.preview(order(PrintSetup.on("none")), 1, LONGEST)).isEmpty();
  }
}
