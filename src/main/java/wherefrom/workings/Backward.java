package wherefrom.workings;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.Optional;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Measured;
import wherefrom.quantity.Unit;

/**
 * Solves any working for one unknown input, such as the gasket thickness for a wanted ratio. Roots
 * are found by a bracketing method (Brent's, of higher order) over the whole range the input may
 * have.
 */
public final class Backward {
  private static final double RELATIVE = 1e-15;
  private static final double ABSOLUTE = 1e-12;
  private static final double MISS = 1e-9;
  private static final int MOST_STEPS = 200;

  /** Past the places usual for a unit, where the ends of a span are told. */
  private static final int MORE_PLACES = 2;

  private final Working working;
  private final Inputs known;
  private final AmountInput unknown;
  private final String resultKey;
  private final Amount wanted;

  private Backward(
      Working working, Inputs known, AmountInput unknown, String resultKey, Amount wanted) {
    this.working = working;
    this.known = known;
    this.unknown = unknown;
    this.resultKey = resultKey;
    this.wanted = wanted;
  }

  /**
   * Finds the input that makes the result what is wanted. A value already entered for the unknown
   * only tells which answer is meant where there are several, and in which unit to show it.
   *
   * @throws IllegalArgumentException where the working has no such input figure
   */
  public static BackwardAnswer solve(
      Working working, Inputs known, String unknownKey, String resultKey, Amount wanted) {
    AmountInput unknown =
        working
            .card()
            .findInput(unknownKey)
            .filter(AmountInput.class::isInstance)
            .map(AmountInput.class::cast)
            .orElseThrow(() -> new IllegalArgumentException("no input figure " + unknownKey));
    return new Backward(working, working.completed(known), unknown, resultKey, wanted).solve();
  }

  private BackwardAnswer solve() {
    WorkingCard card = working.card();
    Amount start = new Amount(unknown.range().most(), Unit.getBase(unknown.dimension()));
    Optional<WorkingAnswer> trouble =
        InputCheck.findTrouble(card, known.with(unknown.key(), start));
    if (trouble.isPresent()) {
      return (BackwardAnswer) trouble.get();
    }
    Probe probe = new Probe(working, known, unknown, resultKey, wanted.inBase().doubleValue());
    if (probe.findMissing().isPresent()) {
      return probe.findMissing().get();
    }
    Survey survey = Survey.of(probe, unknown.range());
    Optional<Nonsense> unlike = probe.findResultUnit().flatMap(this::findWrongUnit);
    if (unlike.isPresent()) {
      return unlike.get();
    }
    if (survey.isFlat()) {
      return new NoAnswer(
          "The result does not depend on " + unknown.words() + " with these figures.");
    }
    return survey.brackets().stream()
        .map(bracket -> root(probe, bracket))
        .filter(x -> Math.abs(probe.offset(x)) <= MISS * Math.max(1, Math.abs(probe.wanted())))
        .min(Comparator.comparingDouble(this::distanceFromStart))
        .<BackwardAnswer>map(x -> solution(probe, x))
        .orElseGet(() -> noAnswer(survey));
  }

  /** A wanted volume is no length, whatever its figure. */
  private Optional<Nonsense> findWrongUnit(Unit shown) {
    if (shown.dimension() == wanted.dimension()) {
      return Optional.empty();
    }
    String like = shown.symbol().isEmpty() ? "" : ", such as " + shown.symbol();
    return Optional.of(
        new Nonsense(
            resultKey,
            resultKey
                + " is "
                + shown.dimension().words()
                + like
                + "; what is wanted was given as "
                + wanted.text()
                + "."));
  }

  private static double root(Probe probe, Survey.Bracket bracket) {
    if (bracket.from() == bracket.to()) {
      return bracket.from();
    }
    BracketingNthOrderBrentSolver solver =
        new BracketingNthOrderBrentSolver(RELATIVE, ABSOLUTE, 0, 5);
    return solver.solve(MOST_STEPS, probe::offset, bracket.from(), bracket.to());
  }

  private double distanceFromStart(double x) {
    double start =
        known
            .findMeasured(unknown.key())
            .map(measured -> measured.value().inBase().doubleValue())
            .orElse(0.0);
    return Math.abs(x - start);
  }

  private BackwardAnswer solution(Probe probe, double x) {
    WorkingAnswer answer = working.compute(known.with(unknown.key(), base(x)));
    if (!(answer instanceof Result result)) {
      return (BackwardAnswer) answer;
    }
    ResultValue value = result.getValue(resultKey);
    double inBase = Amount.of(value.standardUncertainty(), value.unit()).inBase().doubleValue();
    Unit unit = probe.unknownUnit();
    double band = base(Math.abs(inBase / probe.slope(x))).in(unit);
    return new Solution(
        new ResultValue(
            unknown.key(), unknown.words(), unit, base(x).in(unit), band, value.shares()),
        result);
  }

  private BackwardAnswer noAnswer(Survey survey) {
    String span =
        survey
            .findSpan()
            .map(s -> " It stays between " + shown(s.least()) + " and " + shown(s.most()) + ".")
            .orElse(" The working has no result anywhere.");
    return new NoAnswer(
        "No value of "
            + unknown.words()
            + " that makes sense gives "
            + wanted.text()
            + " with the other figures as they are."
            + span);
  }

  private String shown(double inBase) {
    Amount amount = base(inBase, wanted.dimension()).to(wanted.unit());
    BigDecimal digits = amount.number().round(new MathContext(5));
    int places = Math.min(digits.scale(), wanted.unit().decimals() + MORE_PLACES);
    return amount.rounded(Math.max(0, places)).text();
  }

  private Amount base(double inBase) {
    return base(inBase, unknown.dimension());
  }

  private static Amount base(double inBase, Dimension dimension) {
    return new Amount(BigDecimal.valueOf(inBase), Unit.getBase(dimension));
  }

  /** The unit a figure was entered in; empty where none was. */
  static Optional<Unit> findUnit(Inputs inputs, String key) {
    return inputs.findMeasured(key).map(Measured::value).map(Amount::unit);
  }
}
