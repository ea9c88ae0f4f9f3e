package wherefrom.workings.catalogue.bolt;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Measured;
import wherefrom.workings.AmountInput;
import wherefrom.workings.ChoiceInput;
import wherefrom.workings.Entry;
import wherefrom.workings.Inputs;
import wherefrom.workings.Range;

/**
 * The state of the threads a torque is meant for, with the nut factor K of T = K·D·F ({@link
 * Sources#TORQUE}). Its scatter of ±30 % lies between ±35 % dry and ±25 % lubricated (Journal of
 * Failure Analysis and Prevention, 2019, doi:10.1007/s11668-019-00693-z).
 */
public enum Lubricant {
  DRY("dry", "0.20"),
  OILED("oiled", "0.15");

  private static final BigDecimal SCATTER = new BigDecimal("0.30");

  static final String OWN = "own";
  static final ChoiceInput CHOICE =
      ChoiceInput.of(
          "lubricant",
          "How threads and head are prepared: dry (K 0.20), oiled (K 0.15), or own with k given.",
          "dry",
          "oiled",
          OWN);
  public static final AmountInput NUT_FACTOR =
      AmountInput.of(
              "k",
              Dimension.NUMBER,
              "The nut factor K, with lubricant=own; without its own ± it scatters by ±30 %.")
          .in(Range.above("0", "1"))
          .optional();

  private final String word;
  private final String factor;

  Lubricant(String word, String factor) {
    this.word = word;
    this.factor = factor;
  }

  /** K with its scatter. */
  public Measured nutFactor() {
    return scattered(Amount.ofNumber(factor));
  }

  /** Each value within ±30 % taken as equally likely. */
  private static Measured scattered(Amount factor) {
    BigDecimal spread = factor.number().multiply(SCATTER).abs();
    return Measured.ofLimits(factor, new Amount(spread, factor.unit()));
  }

  public static Optional<Lubricant> find(String word) {
    return Arrays.stream(values()).filter(lubricant -> lubricant.word.equals(word)).findFirst();
  }

  /**
   * The inputs with K put in for a named lubricant, unless K was entered, too. A K that was entered
   * without its ± scatters as the others do.
   */
  static Inputs withNutFactor(Inputs inputs) {
    Optional<Measured> own = inputs.findMeasured(NUT_FACTOR.key());
    if (own.isPresent() || inputs.find(NUT_FACTOR.key()).isPresent()) {
      return own.filter(k -> k.standardUncertainty().isEmpty())
          .map(k -> inputs.with(NUT_FACTOR.key(), scattered(k.value())))
          .orElse(inputs);
    }
    return inputs
        .find(CHOICE.key())
        .filter(Entry.Choice.class::isInstance)
        .flatMap(entry -> find(((Entry.Choice) entry).word()))
        .map(lubricant -> inputs.with(NUT_FACTOR.key(), lubricant.nutFactor()))
        .orElse(inputs);
  }
}
