package wherefrom.workings.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A value far off breaks the axis instead of flattening the others. */
class FarOffTest {
  private static final double BAND = 0.0001;

  private static Chart chart(double... values) {
    List<String> names = new ArrayList<>();
    List<Chart.Column> columns = new ArrayList<>();
    for (double value : values) {
      names.add("" + (names.size() + 1));
      columns.add(Chart.Column.ofValue(names.size(), value, value - BAND, value + BAND));
    }
    return Charts.ofSet("set", "off, in", names, columns);
  }

  /** The part of the axis that those but the last one spread over. */
  private static double spread(Axis axis, double... values) {
    double[] crowd = DoubleStream.of(values).limit(values.length - 1L).toArray();
    double least = DoubleStream.of(crowd).min().orElseThrow();
    double most = DoubleStream.of(crowd).max().orElseThrow();
    return axis.part(most) - axis.part(least);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.011, -0.011, 0.05, -0.05, 5, -5})
  void theOthersKeepMoreThanHalfOfTheAxis(double far) {
    double[] values = {0.0010, -0.0008, 0.0002, 0.0005, -0.0010, 0.0007, 0, far};
    Axis axis = chart(values).up();
    assertThat(axis.gap()).isPresent();
    assertThat(axis.words()).isEqualTo("off, in; the axis is broken");
    assertThat(spread(axis, values)).isGreaterThan(0.45);
  }

  @Test
  void valuesThatLieTogetherHaveAWholeAxis() {
    Axis axis = chart(0.0010, -0.0008, 0.0002, 0.0015, -0.0010).up();
    assertThat(axis.gap()).isEmpty();
    assertThat(axis.words()).isEqualTo("off, in");
  }

  @Test
  void twoGroupsOfOneSizeAreNoOutliers() {
    assertThat(chart(0, 0.0001, 0.0002, 0.02, 0.0201, 0.0202).up().gap()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.011, -0.011, 5, -5})
  void alongABrokenAxisMoreIsAlwaysFarther(double far) {
    Axis axis = chart(0.0010, -0.0008, 0.0002, 0.0005, -0.0010, 0.0007, 0, far).up();
    double last = -1;
    for (int at = 0; at <= 1000; at++) {
      double value = axis.least() + at * (axis.most() - axis.least()) / 1000;
      double part = axis.part(value);
      assertThat(part).isBetween(0.0, 1.0).isGreaterThanOrEqualTo(last);
      last = part;
    }
    assertThat(axis.part(axis.least())).isZero();
    assertThat(axis.part(axis.most())).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.011, -0.011, 5, -5})
  void noValueAndNoFigureStandsInTheGap(double far) {
    double[] values = {0.0010, -0.0008, 0.0002, 0.0005, -0.0010, 0.0007, 0, far};
    Axis axis = chart(values).up();
    Axis.Gap gap = axis.gap().orElseThrow();
    for (double value : values) {
      assertThat(value - BAND > gap.to() || value + BAND < gap.from()).isTrue();
    }
    assertThat(axis.ticks()).noneMatch(tick -> tick.at() > gap.from() && tick.at() < gap.to());
    assertThat(axis.ticks()).anyMatch(tick -> tick.at() >= gap.to());
    assertThat(axis.ticks()).anyMatch(tick -> tick.at() <= gap.from());
  }
}
