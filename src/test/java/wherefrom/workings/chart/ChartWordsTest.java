package wherefrom.workings.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What the axes are stands on the plot, on a narrow or a low surface too. */
class ChartWordsTest {
  private static final String ACROSS = "cut off the head";

  private static List<String> words(double width, double height) {
    Chart chart =
        new Chart(
            "ratio",
            Axis.covering(ACROSS, 0, 6),
            Axis.covering("compression ratio", 9, 10),
            List.of(),
            List.of(),
            List.of(Chart.Column.ofValue(0, 9.5, 9.4, 9.6)));
    Surface surface = new Surface(width, height, 10, words -> 10 * words.length());
    return ChartLayout.of(chart, surface).stream()
        .filter(ChartMark.Words.class::isInstance)
        .map(mark -> ((ChartMark.Words) mark).text())
        .toList();
  }

  /** Beside the name of the other axis there is no room for it: it has a row of its own. */
  @Test
  void onANarrowSurfaceTheAxisAcrossIsNamedBelow() {
    assertThat(words(260, 170)).contains(ACROSS);
  }

  @Test
  void onALowSurfaceItIsNamedBesideTheOther() {
    assertThat(words(500, 120)).contains(ACROSS);
  }

  /** A plot that is nothing but words says nothing. */
  @Test
  void wherePlotAndNameLackRoomThePlotStays() {
    assertThat(words(260, 120)).doesNotContain(ACROSS);
  }
}
