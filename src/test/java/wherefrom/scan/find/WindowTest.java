package wherefrom.scan.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.job.image.GreyImage;
import wherefrom.scan.grey.Level;

/** A part of a picture is cut as it is cut with all the rest. */
class WindowTest {
  private static final int WIDTH = 130;
  private static final int HEIGHT = 90;
  private static final int REACH = 14;

  @ParameterizedTest
  @CsvSource({"0,0,130,90", "40,30,90,70", "3,5,60,90", "70,0,130,20", "126,80,130,90"})
  void itsPixelsAreDarkAsInTheWhole(int left, int top, int right, int bottom) {
    Level level = new Level(noise(), 1);
    Window part = new Window(left, top, right, bottom);
    List<Boolean> whole = new ArrayList<>();
    List<Boolean> seen = new ArrayList<>();
    Runs all = cut(level, new Window(0, 0, WIDTH, HEIGHT));
    Runs some = cut(level, part);
    for (int row = top; row < bottom; row++) {
      assertThat(some.start(some.firstOf(row))).isEqualTo(left);
      assertThat(some.end(some.firstOf(row + 1) - 1)).isEqualTo(right);
      for (int column = left; column < right; column++) {
        whole.add(isDark(all, row, column));
        seen.add(isDark(some, row, column));
      }
    }
    assertThat(seen).isEqualTo(whole).contains(true, false);
    assertThat(some.firstOf(top)).isZero();
    assertThat(some.firstOf(HEIGHT)).isEqualTo(some.count()).isEqualTo(some.firstOf(bottom));
  }

  @ParameterizedTest
  @CsvSource({"1, 100, 80, 130, 90", "2, 50, 40, 65, 45", "4, 25, 20, 32, 22"})
  void onASmallerPictureItEndsWithThePicture(int shrink, int left, int top, int right, int bottom) {
    Window part = new Window(100, 80, 500, 400);
    assertThat(part.on(WIDTH / shrink, HEIGHT / shrink, shrink))
        .isEqualTo(new Window(left, top, right, bottom));
  }

  private static Runs cut(Level level, Window part) {
    Runs runs = new Runs(REACH, 3);
    runs.cut(level, part);
    return runs;
  }

  private static boolean isDark(Runs runs, int row, int column) {
    int run = runs.firstOf(row);
    while (runs.end(run) <= column) {
      run++;
    }
    return runs.dark(run);
  }

  private static GreyImage noise() {
    byte[] pixels = new byte[WIDTH * HEIGHT];
    new Random(5).nextBytes(pixels);
    return new GreyImage(WIDTH, HEIGHT, pixels);
  }
}
