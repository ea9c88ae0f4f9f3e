package wherefrom.workings.catalogue;

import java.util.Arrays;
import java.util.List;
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
 * The state of the threads a torque is meant for, with the nut factor K of T = K·D·F and its
 * scatter of ±30 % (fastener article, 2020).
 */
public enum Lubricant {
  DRY("dry", "0.20", "0.06"),
  OILED("oiled", "0.15", "0.045");

  static final String OWN = "own";
  static final ChoiceInput CHOICE =
      ChoiceInput.of(
          "lubricant",
          "How threads and head are prepared: dry (K 0.20), oiled (K 0.15), or own with k given.",
          "dry",
          "oiled",
          OWN);
  static final AmountInput NUT_FACTOR =
      AmountInput.of("k", Dimension.NUMBER, "The nut factor K, with lubricant=own.")
          .in(Range.above("0", "1"))
          .optional();

  private final String word;
  private final String factor;
  private final String scatter;

  Lubricant(String word, String factor, String scatter) {
    this.word = word;
    this.factor = factor;
    this.scatter = scatter;
  }

  public String word() {
    return word;
  }

  /** K with its scatter, each value within ±30 % taken as equally likely. */
  public Measured nutFactor() {
    return Measured.ofLimits(Amount.ofNumber(factor), Amount.ofNumber(scatter));
  }

  public static Optional<Lubricant> find(String word) {
    return Arrays.stream(values()).filter(lubricant -> lubricant.word.equals(word)).findFirst();
  }

  static List<wherefrom.workings.InputSpec> inputs() {
    return List.of(CHOICE, NUT_FACTOR);
  }

  /** The inputs with K put in for a named lubricant, unless K was entered, too. */
  static Inputs withNutFactor(Inputs inputs) {
    if (inputs.find(NUT_FACTOR.key()).isPresent()) {
      return inputs;
    }
    return inputs
        .find(CHOICE.key())
        .filter(Entry.Choice.class::isInstance)
        .flatMap(entry -> find(((Entry.Choice) entry).word()))
        .map(lubricant -> inputs.with(NUT_FACTOR.key(), lubricant.nutFactor()))
        .orElse(inputs);
  }
}
