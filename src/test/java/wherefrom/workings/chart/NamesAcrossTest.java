package wherefrom.workings.chart;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Names below a plot: none touches another, and no line runs through one. */
class NamesAcrossTest {

  @Test
  void aLineLeadsToTheSecondRowWhereNoNameOfTheFirstStandsInItsWay() {
    NamesAcross roomy = new NamesAcross(2, 10);
    assertThat(roomy.take(50, 20, 80)).hasValue(0);
    assertThat(roomy.take(100, 70, 130)).hasValue(1);
    assertThat(roomy.leads()).containsExactly(100.0);
  }

  @Test
  void noLineRunsThroughANameOfTheFirstRow() {
    NamesAcross crowded = new NamesAcross(2, 10);
    assertThat(crowded.take(50, 20, 80)).hasValue(0);
    assertThat(crowded.take(81, 51, 111)).hasValue(1);
    assertThat(crowded.leads()).isEmpty();
  }

  @Test
  void aNameThatWouldTouchTheOneBeforeIsLeftOut() {
    NamesAcross one = new NamesAcross(1, 10);
    assertThat(one.take(50, 20, 80)).hasValue(0);
    assertThat(one.take(80, 50, 110)).isEmpty();
    assertThat(one.leads()).isEmpty();
  }
}
