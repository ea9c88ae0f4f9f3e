package wherefrom.job.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wherefrom.job.settings.WindowPlace.State;

/** A window stands where it stood, as far as the screens of today let it. */
class WindowPlaceTest {
  /** A laptop's, below a bar of 30 pixels. */
  private static final ScreenArea FIRST = new ScreenArea(0, 30, 1280, 770);

  private static final ScreenArea LEFT = new ScreenArea(-1920, 0, 1920, 1080);
  private static final ScreenArea RIGHT = new ScreenArea(1280, 0, 1920, 1080);

  private static WindowPlace window(double x, double y, double width, double height) {
    return new WindowPlace(State.WINDOW, x, y, width, height);
  }

  @Test
  void staysWhereItIsSeenWhole() {
    WindowPlace window = window(40, 50, 1024, 600);
    assertThat(window.on(List.of(FIRST))).isEqualTo(window);
    WindowPlace beside = window(-1000, 100, 900, 700);
    assertThat(beside.on(List.of(FIRST, LEFT))).isEqualTo(beside);
  }

  @Test
  void staysOverTwoScreensThatShowAllOfIt() {
    WindowPlace over = window(1000, 100, 1000, 600);
    assertThat(over.on(List.of(FIRST, RIGHT))).isEqualTo(over);
  }

  @Test
  void isNoLargerThanItsScreen() {
    assertThat(window(0, 0, 3840, 2160).on(List.of(FIRST))).isEqualTo(window(0, 30, 1280, 770));
    assertThat(window(200, 40, 800, 900).on(List.of(FIRST))).isEqualTo(window(200, 30, 800, 770));
  }

  @Test
  void comesToTheFirstScreenWhereItsOwnIsGone() {
    assertThat(window(-1500, 200, 1024, 600).on(List.of(FIRST)))
        .isEqualTo(window(0, 200, 1024, 600));
    assertThat(window(2000, 900, 1600, 1000).on(List.of(FIRST)))
        .isEqualTo(window(0, 30, 1280, 770));
  }

  @Test
  void comesBackWholeToTheScreenThatShowsMostOfIt() {
    assertThat(window(1100, 700, 1000, 500).on(List.of(FIRST, RIGHT)))
        .isEqualTo(window(1280, 580, 1000, 500));
    assertThat(window(-100, -20, 1000, 500).on(List.of(FIRST))).isEqualTo(window(0, 30, 1000, 500));
  }

  @Test
  void staysWhereNoScreenIsKnown() {
    WindowPlace window = window(40, 50, 1024, 600);
    assertThat(window.on(List.of())).isEqualTo(window);
  }

  @Test
  void isSeenWholeWhateverStoodInTheSettings() {
    Random random = new Random(14);
    for (int turn = 0; turn < 10_000; turn++) {
      WindowPlace kept =
          window(
              random.nextInt(20_000) - 10_000,
              random.nextInt(20_000) - 10_000,
              200 + random.nextInt(10_000),
              200 + random.nextInt(10_000));
      List<ScreenArea> screens = turn % 2 == 0 ? List.of(FIRST) : List.of(FIRST, LEFT, RIGHT);
      WindowPlace now = kept.on(screens);
      assertThat(screens.stream().mapToDouble(screen -> screen.shared(now)).sum())
          .isEqualTo(now.width() * now.height());
      assertThat(now.width()).isLessThanOrEqualTo(kept.width());
      assertThat(now.on(screens)).isEqualTo(now);
    }
  }
}
