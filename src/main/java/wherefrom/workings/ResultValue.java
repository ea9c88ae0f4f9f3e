package wherefrom.workings;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;

/**
 * One result.
 *
 * @param value in {@code unit}
 * @param standardUncertainty in {@code unit}; zero where no input had one
 * @param shares each input's part in the variance, the largest first; inputs without uncertainty
 *     are left out
 * @param rounding which way the value goes where it is shown with fewer places
 */
public record ResultValue(
    String key,
    String words,
    Unit unit,
    double value,
    double standardUncertainty,
    List<Share> shares,
    Rounding rounding) {
  private static final int EXTRA_PLACES = 3;

  /**
   * An uncertainty is told with so many places more than its unit, rounded up where it has more.
   */
  private static final int MOST_PLACES = 1;

  public ResultValue {
    shares = List.copyOf(shares);
  }

  public ResultValue(
      String key,
      String words,
      Unit unit,
      double value,
      double standardUncertainty,
      List<Share> shares) {
    this(key, words, unit, value, standardUncertainty, shares, Rounding.NEAREST);
  }

  /** The input whose better measurement would help most; empty where none had an uncertainty. */
  public Optional<Share> findBiggestShare() {
    return shares.stream().findFirst();
  }

  public Amount amount() {
    return Amount.of(value, unit);
  }

  /**
   * "0.0416 in ± 0.0033 in": with an uncertainty, as many places as show two of its digits, though
   * no more than one beyond those usual for the unit; without one, or with one too small to matter,
   * the usual ones.
   */
  public String text() {
    return said(Amount::text);
  }

  /** As {@link #text()}, without its uncertainty. */
  public String valueText() {
    return rounded().text();
  }

  /** As {@link #text()}, without the unit. */
  public String figure() {
    return said(amount -> amount.number().toPlainString());
  }

  private String said(Function<Amount, String> words) {
    return words.apply(rounded())
        + findSpread().map(spread -> " ± " + words.apply(spread)).orElse("");
  }

  private Amount rounded() {
    return findSpread()
        .map(spread -> amount().rounded(spread.number().scale()))
        .orElseGet(() -> new Amount(rounding.rounded(amount().number(), unit.decimals()), unit));
  }

  /** Whether {@link #text()} tells an uncertainty. */
  public boolean showsSpread() {
    return findSpread().isPresent();
  }

  /** Empty without an uncertainty, or with one too small to matter. */
  private Optional<Amount> findSpread() {
    double least = Math.pow(10, -(unit.decimals() + EXTRA_PLACES));
    if (standardUncertainty < least || rounding != Rounding.NEAREST) {
      return Optional.empty();
    }
    BigDecimal u = BigDecimal.valueOf(standardUncertainty).round(new MathContext(2));
    int places = Math.max(0, Math.min(u.scale(), unit.decimals() + MOST_PLACES));
    return Optional.of(new Amount(u.setScale(places, RoundingMode.CEILING), unit));
  }
}
