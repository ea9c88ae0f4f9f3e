package wherefrom.scan.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.image.GreyImage;
import wherefrom.scan.grey.Level;

class FinderScanTest {
  private static final int[] STRIPES = {2, 2, 2, 6, 2, 2};
  private static final int RUNS = 128;
  private static final int HEIGHT = 256;

  /**
   * Stripes as wide as a cut through a finder pattern, then as many narrow ones as fill the row.
   */
  private static GreyImage stripes() {
    int width = 16 + RUNS - STRIPES.length;
    byte[] pixels = new byte[width * HEIGHT];
    for (int row = 0; row < HEIGHT; row++) {
      int x = 0;
      for (int run = 0; run < RUNS; run++) {
        int wide = run < STRIPES.length ? STRIPES[run] : 1;
        for (int end = x + wide; x < end; x++) {
          pixels[row * width + x] = (byte) (run % 2 == 0 ? 255 : 0);
        }
      }
    }
    return new GreyImage(width, HEIGHT, pixels);
  }

  @Test
  void aPartOfThePictureIsSearchedToItsLastRowAndNoFurther() {
    Level level = new Level(stripes(), 1);
    for (int end = 4; end <= HEIGHT; end += 4) {
      Runs runs = new Runs(14, 3);
      runs.cut(level, 0, end);
      List<Finder> found = new FinderScan().scan(runs, HEIGHT, 1);
      int last = end;
      assertThat(found).allSatisfy(finder -> assertThat(finder.y()).isLessThan(last));
    }
  }

  @Test
  void aPartThatBeginsLowerIsSearchedFromItsFirstRow() {
    Level level = new Level(stripes(), 1);
    for (int first = 4; first < HEIGHT - 4; first += 12) {
      Runs runs = new Runs(14, 3);
      runs.cut(level, first, HEIGHT);
      int begin = first;
      assertThat(new FinderScan().scan(runs, HEIGHT, 1))
          .allSatisfy(finder -> assertThat(finder.y()).isGreaterThanOrEqualTo(begin));
    }
  }
}
