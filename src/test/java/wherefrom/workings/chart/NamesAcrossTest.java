package wherefrom.workings.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Names below a plot: none touches another, and no line runs through one. */
class NamesAcrossTest {

  @Test
  void aLineLeadsToTheSecondRowWhereNoNameOfTheFirstStandsInItsWay() {
    NamesAcross roomy = new NamesAcross(2, 10);
    assertThat(roomy.take(0, 50, 20, 80)).hasValue(0);
    assertThat(roomy.take(1, 100, 70, 130)).hasValue(1);
    assertThat(roomy.leads()).containsExactly(100.0);
  }

  @Test
  void noLineRunsThroughANameOfTheFirstRow() {
    NamesAcross crowded = new NamesAcross(2, 10);
    assertThat(crowded.take(0, 50, 20, 80)).hasValue(0);
    assertThat(crowded.take(1, 81, 51, 111)).hasValue(1);
    assertThat(crowded.leads()).isEmpty();
  }

  @Test
  void aNameThatWouldTouchTheOneBeforeIsLeftOut() {
    NamesAcross one = new NamesAcross(1, 10);
    assertThat(one.take(0, 50, 20, 80)).hasValue(0);
    assertThat(one.take(1, 80, 50, 110)).isEmpty();
    assertThat(one.leads()).isEmpty();
  }

  /** The name of what stands out has its room first; else its neighbor would seem to be meant. */
  @Test
  void whatStandsOutIsNamedAndItsNeighborsGiveWay() {
    List<String> names = List.of("4 IN", "4 EX", "5 IN", "5 EX", "6 IN", "6 EX");
    for (int odd = 1; odd <= names.size(); odd++) {
      List<Chart.Column> columns = new ArrayList<>();
      for (int place = 1; place <= names.size(); place++) {
        Chart.Column one = Chart.Column.ofValue(place, place == odd ? 2 : 1, 0.9, 2.1);
        columns.add(one.with(List.of(), place == odd ? "odd" : "", place == odd));
      }
      Axis across = Axis.ofNames("", names);
      Chart chart =
          new Chart("set", across, Axis.covering("", 0, 2), List.of(), List.of(), columns);
      Surface surface = new Surface(260, 150, 10, words -> 10 * words.length());
      List<ChartMark.Words> told =
          ChartLayout.of(chart, surface).stream()
              .filter(ChartMark.Words.class::isInstance)
              .map(ChartMark.Words.class::cast)
              .filter(words -> names.contains(words.text()))
              .toList();
      assertThat(told).hasSizeLessThan(names.size());
      assertThat(told).extracting(ChartMark.Words::text).contains(names.get(odd - 1));
    }
  }
}
