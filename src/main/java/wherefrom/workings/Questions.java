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

  private Questions() {}

  /** One for each figure outside what is usual, then what the working itself asks. */
  static List<Note> of(Working working, Terms terms, Inputs inputs) {
    List<Note> questions = new ArrayList<>();
    for (InputSpec input : working.card().inputs()) {
      if (input instanceof AmountInput figure) {
        inputs.findMeasured(figure.key()).flatMap(m -> ask(figure, m.value())).ifPresent(questions::add);
      }
    }
    questions.addAll(working.questions(terms));
    return questions;
  }

  private static Optional<Note> ask(AmountInput input, Amount value) {
    if (input.usual().holds(value.inBase())) {
      return Optional.empty();
    }
    String text =
        input.words()
            + " "
            + shortened(value)
            + ": usual are "
            + bound(input.usual().least(), value.unit())
            + " to "
            + bound(input.usual().most(), value.unit())
            + "."
            + meant(input, value)
            + " Read it again.";
    return Optional.of(Note.question("unusual-" + input.key(), text, Source.commonPractice()));
  }

  /** A figure that was worked out backwards may have more digits than anyone reads. */
  private static String shortened(Amount value) {
    boolean lengthy = value.number().precision() > 8;
    return lengthy ? new Amount(value.number().round(new MathContext(5)), value.unit()).text() : value.text();
  }

  private static String bound(BigDecimal base, Unit unit) {
    BigDecimal size = base.multiply(unit.denominator()).divide(unit.numerator(), SHORT);
    BigDecimal plain = size.signum() == 0 ? BigDecimal.ZERO : size.stripTrailingZeros();
    return new Amount(plain.scale() < 0 ? plain.setScale(0) : plain, unit).text();
  }

  /** Inch typed for millimetre or the other way round, where that would be usual. */
  private static String meant(AmountInput input, Amount value) {
    if (input.dimension() != Dimension.LENGTH) {
      return "";
    }
    boolean inch = UnitSystem.find(value.unit()).equals(Optional.of(UnitSystem.INCH));
    Amount other = new Amount(value.number(), inch ? Unit.MILLIMETRE : Unit.INCH);
    return input.usual().holds(other.inBase()) ? " Was it " + shortened(other) + "?" : "";
  }
}
