package wherefrom.workings;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Measured;
import wherefrom.quantity.Unit;
import wherefrom.workings.maths.DoubleDouble;
import wherefrom.workings.maths.DualNumber;

/** A working seen as a function of one input, in base units. */
final class Probe {
  private final Working working;
  private final WorkingCard card;
  private final Inputs known;
  private final AmountInput unknown;
  private final String resultKey;
  private final double wanted;
  private final Map<String, DualNumber> figures = new HashMap<>();
  private final Terms complete;
  private Optional<Unit> resultUnit = Optional.empty();

  Probe(Working working, Inputs known, AmountInput unknown, String resultKey, double wanted) {
    this.working = working;
    this.card = working.card();
    this.known = known;
    this.unknown = unknown;
    this.resultKey = resultKey;
    this.wanted = wanted;
    for (InputSpec input : card.inputs()) {
      Optional<Measured> measured = known.findMeasured(input.key());
      measured.ifPresent(
          m -> figures.put(input.key(), DualNumber.of(DoubleDouble.of(m.value().inBase()))));
    }
    boolean given = known.find(unknown.key()).isPresent();
    Inputs all = given ? known : known.with(unknown.key(), placeholder());
    this.complete = new Terms(card, all, figures);
  }

  double wanted() {
    return wanted;
  }

  /** The result less the wanted one; not a number where the working refuses the input. */
  double offset(double x) {
    return result(x).map(dual -> dual.toDouble() - wanted).orElse(Double.NaN);
  }

  /** The change of the result with the input. */
  double slope(double x) {
    return result(x).map(dual -> dual.slope(0)).orElse(Double.NaN);
  }

  /** What the formula still asks for beyond the inputs that are always required. */
  Optional<MissingInputs> findMissing() {
    Evaluation evaluation = evaluate(unknown.range().most().doubleValue());
    return evaluation instanceof MissingInputs missing ? Optional.of(missing) : Optional.empty();
  }

  /** As entered, if it was; else as results of that kind are shown. */
  Unit unknownUnit() {
    return Backward.findUnit(known, unknown.key())
        .orElseGet(() -> new Terms(card, known, figures).unit(unknown.dimension()));
  }

  private Optional<DualNumber> result(double x) {
    if (!(evaluate(x) instanceof Values values)) {
      return Optional.empty();
    }
    return values.figures().stream()
        .filter(figure -> figure.key().equals(resultKey))
        .map(this::seen)
        .filter(dual -> Double.isFinite(dual.toDouble()))
        .findFirst();
  }

  private DualNumber seen(Figure figure) {
    resultUnit = Optional.of(figure.unit());
    return figure.inBase();
  }

  /** The unit that the result is shown in; empty where none was seen so far. */
  Optional<Unit> findResultUnit() {
    return resultUnit;
  }

  private Evaluation evaluate(double x) {
    return working.evaluate(terms(x));
  }

  private Terms terms(double x) {
    Map<String, DualNumber> all = new HashMap<>(figures);
    all.put(unknown.key(), DualNumber.ofInput(DoubleDouble.of(x), 0, 1));
    return complete.withFigures(all);
  }

  /** Stands for the unknown where only its presence is asked for. */
  private Amount placeholder() {
    return new Amount(BigDecimal.ONE, Unit.getBase(unknown.dimension()));
  }
}
