package wherefrom.logbook;

import java.math.BigDecimal;
import java.util.Optional;
import wherefrom.quantity.Amount;
import wherefrom.quantity.AmountReading;
import wherefrom.quantity.AmountText;
import wherefrom.quantity.Unit;

/**
 * How an amount stands in the file: the figure, every decimal that was entered, in one field and
 * its unit in another, both as text; both empty where there is none.
 */
final class AmountFields {
  private AmountFields() {}

  static String figure(Amount amount) {
    return amount.number().toPlainString();
  }

  static String figure(Optional<Amount> amount) {
    return amount.map(AmountFields::figure).orElse("");
  }

  static String unit(Amount amount) {
    return amount.unit().symbol();
  }

  static String unit(Optional<Amount> amount) {
    return amount.map(AmountFields::unit).orElse("");
  }

  /**
   * The amount with this figure and unit.
   *
   * @throws IllegalArgumentException where one of them is none
   */
  static Amount amount(String figure, String unit) {
    Unit known =
        Unit.find(unit)
            .orElseThrow(() -> new IllegalArgumentException("\"" + unit + "\" is not a unit"));
    try {
      return new Amount(new BigDecimal(figure), known);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException("\"" + figure + "\" is not a figure", e);
    }
  }

  /** As {@link #amount}; absent where the figure is empty. */
  static Optional<Amount> find(String figure, String unit) {
    return figure.isEmpty() ? Optional.empty() : Optional.of(amount(figure, unit));
  }

  /** An amount that stands in one field, as people type it: {@code 30 N·m}. */
  static Optional<Amount> find(String text) {
    return AmountText.read(text) instanceof AmountReading.Understood understood
        ? Optional.of(understood.amount())
        : Optional.empty();
  }
}
