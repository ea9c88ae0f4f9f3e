package wherefrom.workings;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;

/** Asks back where a figure could be, but no engine usually has it. Nothing is refused for it. */
final class Questions {
  private static final MathContext SHORT = new MathContext(2);
  private static final MathContext ENOUGH = new MathContext(5);
  private static final int MOST_DIGITS = 8;

  private Questions() {}

  /** One for each figure outside what is usual, then what the working itself asks. */
  static List<Note> of(Working working, Terms terms, Inputs inputs) {
    List<Note> questions = new ArrayList<>();
    for (InputSpec input : working.card().inputs()) {
      if (input instanceof AmountInput figure) {
        inputs
            .findMeasured(figure.key())
            .flatMap(measured -> ask(figure, measured.value()))
            .ifPresent(questions::add);
      }
    }
    questions.addAll(working.questions(terms));
    return questions;
  }

  private static Optional<Note> ask(AmountInput input, Amount value) {
    return UsualFigures.find(input)
        .filter(usual -> !usual.holds(value.inBase()))
        .map(
            usual ->
                Note.question(
                    "unusual-" + input.key(),
                    sentence(input, value, usual),
                    Source.commonPractice()));
  }

  private static String sentence(AmountInput input, Amount value, Range usual) {
    return input.words()
        + " "
        + shortened(value)
        + ": usual are "
        + bound(usual.least(), value.unit())
        + " to "
        + bound(usual.most(), value.unit())
        + "."
        + meant(input, value, usual)
        + " Read it again.";
  }

  /** A figure that was worked out backwards may have more digits than anyone reads. */
  private static String shortened(Amount value) {
    boolean lengthy = value.number().precision() > MOST_DIGITS;
    return lengthy ? new Amount(value.number().round(ENOUGH), value.unit()).text() : value.text();
  }

  private static String bound(BigDecimal base, Unit unit) {
    BigDecimal size = base.multiply(unit.denominator()).divide(unit.numerator(), SHORT);
    BigDecimal plain = size.signum() == 0 ? BigDecimal.ZERO : size.stripTrailingZeros();
    return new Amount(plain.scale() < 0 ? plain.setScale(0) : plain, unit).text();
  }

  /** Inch typed for millimetre or the other way round, where that would be usual. */
  private static String meant(AmountInput input, Amount value, Range usual) {
    if (input.dimension() != Dimension.LENGTH) {
      return "";
    }
    boolean inch = UnitSystem.find(value.unit()).equals(Optional.of(UnitSystem.INCH));
    Amount other = new Amount(value.number(), inch ? Unit.MILLIMETRE : Unit.INCH);
    return usual.holds(other.inBase()) ? " Was it " + shortened(other) + "?" : "";
  }
}
