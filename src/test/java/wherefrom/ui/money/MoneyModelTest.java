package wherefrom.ui.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import wherefrom.ui.sample.SampleJob;

class MoneyModelTest {
  private final MoneyModel model = new MoneyModel(SampleJob.apart().job, Locale.US);

  @Test
  void anotherCurrencyKeepsTheCents() {
    model.setBudget("1500.75");
    model.setCurrency("EUR");
    assertThat(model.text(model.budget().limit())).isEqualTo("1500.75 EUR");
    model.setCurrency("JPY");
    assertThat(model.text(model.budget().limit())).isEqualTo("1501 JPY");
  }
}
