package wherefrom.ui.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Decision;
import wherefrom.job.decide.Deciding;
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

  @Test
  void nothingIsAtLeastOnceAllHasAPrice() {
    SampleJob sample = SampleJob.apart();
    MoneyModel money = new MoneyModel(sample.job, Locale.US);
    money.setBudget("1200");
    money.unpriced().forEach(item -> money.setPrice(item.what(), "10"));
    assertThat(money.unpriced()).isEmpty();
    assertThat(money.sentence()).doesNotContain("at least").contains(" left.");
    assertThat(money.unpricedWords()).isEmpty();
  }

  @Test
  void whatIsDecidedAndHasNoPriceIsNamedBesideTheTotal() {
    SampleJob sample = SampleJob.apart();
    MoneyModel money = new MoneyModel(sample.job, Locale.US);
    assertThat(money.sentence()).isEqualTo("No amount is noted yet.");
    assertThat(money.unpricedWords()).startsWith("1 ×\u00a0gasket set");
    money.setBudget("1200");
    new Deciding(sample.job).decide(sample.part("lifter@1IN").item(), Decision.REPLACE, "worn");
    assertThat(money.sentence()).isEqualTo("Total at least 0.00 USD; at most 1200.00 USD left.");
    assertThat(money.brief()).isEqualTo("At least 0.00 USD, at most 1200.00 USD left.");
    assertThat(money.unpricedWords()).isNotEmpty();
    assertThat(money.unpriced()).extracting(item -> item.what().words()).contains("lifters");
  }
}
