package wherefrom.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Locale;
import java.util.Optional;

/**
 * The currency of an engine job (ISO 4217), with as many decimals as it has. Amounts are kept in
 * hundredths, so that a currency with thousandths is kept to its hundredths.
 */
public record JobCurrency(Currency currency) {
  private static final int KEPT = 2;

  /** By the three letters of ISO 4217; empty for letters that stand for none. */
  public static Optional<JobCurrency> find(String letters) {
    return Currency.getAvailableCurrencies().stream()
        .filter(one -> one.getCurrencyCode().equals(letters))
        .findFirst()
        .map(JobCurrency::new);
  }

  /** Of the person's country; the euro's where the locale names none. */
  public static JobCurrency of(Locale locale) {
    String country = locale.getCountry();
    return Optional.of(country)
        .filter(letters -> letters.matches("[A-Z]{2}"))
        .flatMap(JobCurrency::ofCountry)
        .orElseGet(() -> new JobCurrency(Currency.getInstance("EUR")));
  }

  private static Optional<JobCurrency> ofCountry(String country) {
    try {
      // A territory without a currency of its own has none here.
      return Optional.ofNullable(
              Currency.getInstance(new Locale.Builder().setRegion(country).build()))
          .map(JobCurrency::new);
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  public String letters() {
    return currency.getCurrencyCode();
  }

  /** As people of a country write it: {@code €}; the letters where they have no sign for it. */
  public String symbol(Locale locale) {
    return currency.getSymbol(locale);
  }

  /** How many decimals an amount is shown with. */
  public int decimals() {
    return Math.max(0, Math.min(KEPT, currency.getDefaultFractionDigits()));
  }

  /** {@code 12.50 EUR}, {@code 1250 JPY}: a decimal point, no thousands mark. */
  public String text(Money money) {
    return figure(money) + " " + letters();
  }

  /** {@code 12.50}. */
  public String figure(Money money) {
    return BigDecimal.valueOf(money.cents(), KEPT)
        .setScale(decimals(), RoundingMode.HALF_UP)
        .toPlainString();
  }

  /** Reads an amount; empty for what is none, or is finer than the currency's smallest coin. */
  public Optional<Money> read(String text) {
    return Money.find(text).filter(this::isWhole);
  }

  private boolean isWhole(Money money) {
    return decimals() == KEPT || money.cents() % (long) Math.pow(10, KEPT - decimals()) == 0;
  }

  /** An amount like those that {@link #read} takes. */
  public String example() {
    return decimals() == 0 ? "1250" : "12.50";
  }
}
