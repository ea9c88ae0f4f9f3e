package wherefrom.workings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.quantity.Unit;

/** A figure is told as closely as a tool of the bench can tell it. */
class ResultValueTest {
  @ParameterizedTest
  @CsvSource({
    "INCH, 0.0617, 0.000087, 0.06170 in ± 0.00009 in",
    "INCH, 2.609649, 0.0000931, 2.60965 in ± 0.00010 in",
    "INCH, 0.00065, 0.000134, 0.00065 in ± 0.00013 in",
    "INCH, 0.0416, 0.0033, 0.0416 in ± 0.0033 in",
    "MILLIMETRE, 0.0381, 0.0034, 0.0381 mm ± 0.0034 mm"
  })
  void itHasNoMoreThanOnePlaceBeyondTheUsual(Unit unit, double value, double u, String text) {
    assertThat(new ResultValue("value", "value", unit, value, u, List.of()).text()).isEqualTo(text);
  }
}
