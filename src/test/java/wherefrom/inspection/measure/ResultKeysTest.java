package wherefrom.inspection.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;

class ResultKeysTest {
  static List<ReadingPlan> plans() {
    return ReadingPlans.all();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyResultThatCanBeBoundedIsWorkedOut(ReadingPlan plan) {
    Unit unit = Unit.getBase(plan.stations().get(0).dimension());
    double middle = (plan.least() + plan.most()) / 2;
    List<Sample> samples = new ArrayList<>();
    for (Station station : plan.stations()) {
      Unit own = Unit.getBase(station.dimension());
      // Along a curve, so that one which is sought in them is found.
      double away = samples.size() - (plan.stations().size() - 1) / 2.0;
      double curved = plan.shape() == Derivation.DEGREES ? middle + away * away / 100 : middle;
      samples.add(new Sample(station, List.of(Amount.of(curved, own))));
    }
    Amount step = Amount.of("0.01", unit);
    List<String> worked =
        Results.of(
                plan,
                samples,
                new Tool("tool", step, step, step),
                Optional.of(Amount.of(middle, unit)))
            .stream()
            .map(ResultValue::key)
            .toList();
    assertThat(worked)
        .containsAll(
            ResultKeys.of(plan).stream()
                .map(ResultKeys.Bounded::key)
                .filter(key -> !key.equals("clearance"))
                .toList());
  }
}
