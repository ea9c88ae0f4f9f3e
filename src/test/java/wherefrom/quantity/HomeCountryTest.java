package wherefrom.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class HomeCountryTest {
  @Test
  void theSystemsCountryDecidesAndInchesOnlyWhereItNamesNone() {
    assertThat(HomeCountry.of(Locale.GERMANY, UnitSystem.INCH)).isEqualTo(Locale.GERMANY);
    assertThat(HomeCountry.of(Locale.ENGLISH, UnitSystem.INCH)).isEqualTo(Locale.US);
    assertThat(HomeCountry.of(Locale.ENGLISH, UnitSystem.METRIC)).isEqualTo(Locale.ENGLISH);
  }
}
