package wherefrom.workings.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A degree wheel has one mark for 0° and 360°: plain geometry, own examples. */
class WheelReadingsTest {
  @ParameterizedTest
  @CsvSource({
    "340, 24, 2",
    "-20, 24, 2",
    "24, 340, 2",
    "-32, 29, -1.5",
    "330, 29, 359.5",
    "200, 160, 180",
    "-340, -24, -2",
    "359, 1, 0"
  })
  void topDeadCentreIsMidwayTheShorterWayRound(double before, double after, double centre) {
    assertThat(
            Ask.value(
                "center", "top-dead-center", "before=" + before + "deg", "after=" + after + "deg"))
        .isCloseTo(centre, within(1e-12));
  }

  @Test
  void halfATurnApartHasTwoMiddlesAndIsRefused() {
    assertThat(Ask.nonsense("top-dead-center", "before=90deg", "after=270deg").sentence())
        .contains("half a turn");
  }

  @ParameterizedTest
  @CsvSource({"358, 4, 6", "4, 358, 6", "8, 5, 3", "-2, 4, 6", "360, 0, 0", "-358, 1, 1"})
  void slackIsTheShorterWayRound(double forward, double backward, double slack) {
    assertThat(
            Ask.value(
                "slack", "cam-slack", "forward=" + forward + "deg", "backward=" + backward + "deg"))
        .isCloseTo(slack, within(1e-12));
  }
}
