package wherefrom.inspection.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.catalogue.basis.Sisters;

/**
 * Questions readings that may be slips: printed and typed figures are often wrong, inch and
 * millimetre mixed up above all.
 */
public final class Plausibility {
  private static final double MM_PER_INCH = 25.4;

  /** How near to 25.4 a ratio must be to be taken for a slip of the unit. */
  private static final double NEAR = 0.08;

  /** How far from the others of its kind a large size may be. */
  private static final double FAR = 0.15;

  /** From this size on, in mm or newtons, the others of its kind say something. */
  private static final double LARGE = 5;

  private static final int FEWEST_OTHERS = 3;

  /** By how many times more two of a kind may differ than readings of one surface. */
  private static final double OF_TWO = 1.5;

  private Plausibility() {}

  /**
   * What is odd about the readings of a station.
   *
   * @param others what the same station of others of the kind reads, in mm or newtons
   */
  public static List<Question> ask(ReadingPlan plan, Sample sample, Tool tool, double[] others) {
    List<Question> questions = new ArrayList<>();
    for (Amount reading : sample.readings()) {
      unitSlip(plan, sample.station(), reading, others)
          .or(() -> implausible(plan, sample.station(), reading))
          .or(() -> farFromOthers(plan, sample.station(), reading, others))
          .ifPresent(questions::add);
    }
    repeats(sample, tool).ifPresent(questions::add);
    return questions;
  }

  private static Optional<Question> unitSlip(
      ReadingPlan plan, Station station, Amount reading, double[] others) {
    if (station.dimension() != Dimension.LENGTH) {
      return Optional.empty();
    }
    double base = reading.inBase().doubleValue();
    boolean inch = reading.unit() == Unit.INCH || reading.unit() == Unit.THOU;
    double meant = inch ? base / MM_PER_INCH : base * MM_PER_INCH;
    boolean byOthers = others.length >= FEWEST_OTHERS && isNear(meant, median(others));
    boolean byPlan = !isWithin(plan, station, base) && isWithin(plan, station, meant);
    Amount other = new Amount(reading.number(), inch ? Unit.MILLIMETRE : Unit.INCH);
    return byOthers || byPlan
        ? Optional.of(
            new Question(
                Question.Kind.UNIT_SLIP,
                station.key(),
                Optional.of(reading),
                Optional.of(other),
                reading.text()
                    + " at \""
                    + station.words()
                    + "\": was it "
                    + other.text()
                    + " by any chance?"))
        : Optional.empty();
  }

  private static Optional<Question> implausible(ReadingPlan plan, Station station, Amount reading) {
    return isWithin(plan, station, reading.inBase().doubleValue())
        ? Optional.empty()
        : Optional.of(
            Question.of(
                Question.Kind.IMPLAUSIBLE,
                station.key(),
                Optional.of(reading),
                reading.text()
                    + " at \""
                    + station.words()
                    + "\" is not a size to be expected. Read again."));
  }

  private static Optional<Question> farFromOthers(
      ReadingPlan plan, Station station, Amount reading, double[] others) {
    double base = reading.inBase().doubleValue();
    if (others.length < FEWEST_OTHERS
        || median(others) < LARGE
        || Math.abs(base - median(others)) <= far(plan, median(others))) {
      return Optional.empty();
    }
    return Optional.of(
        Question.of(
            Question.Kind.FAR_FROM_OTHERS,
            station.key(),
            Optional.of(reading),
            reading.text()
                + " at \""
                + station.words()
                + "\" is far from the others of its kind. Read again."));
  }

  /** Two of a kind differ by wear and by what a maker allows; a few surfaces only by little. */
  private static double far(ReadingPlan plan, double median) {
    double byShare = FAR * median;
    return plan.apart() > 0 ? Math.min(byShare, OF_TWO * plan.apart()) : byShare;
  }

  /** Readings of one surface, each of which is asked back where it is far from the rest. */
  public static List<Question> askSisters(ReadingPlan plan, List<Sample> samples) {
    List<Question> questions = new ArrayList<>();
    double[] sizes =
        samples.stream()
            .mapToDouble(one -> Amount.of(one.mean(), one.unit()).inBase().doubleValue())
            .toArray();
    for (int at = 0; plan.apart() > 0 && at < sizes.length; at++) {
      if (Sisters.distance(sizes, at) > plan.apart()) {
        questions.add(sister(samples.get(at), Sisters.distance(sizes, at)));
      }
    }
    return questions;
  }

  /** A cylinder cannot hold more than it is given: the gauges were swapped, or one was misread. */
  public static Optional<Question> askHeld(ReadingPlan plan, List<Sample> samples, Tool tool) {
    if (plan.shape() != Derivation.LEAK || samples.size() < plan.stations().size()) {
      return Optional.empty();
    }
    Sample held = samples.get(samples.size() - 1);
    return Results.of(plan, samples, tool, Optional.empty()).isEmpty()
        ? Optional.of(
            Question.of(
                Question.Kind.IMPLAUSIBLE,
                held.station().key(),
                Optional.of(held.readings().get(held.readings().size() - 1)),
                "The cylinder cannot hold more than it is given. Were the gauges swapped?"))
        : Optional.empty();
  }

  private static Question sister(Sample sample, double distance) {
    Unit unit = sample.unit();
    Amount mean = Amount.of(sample.mean(), unit).rounded(unit.decimals());
    return Question.of(
        Question.Kind.FAR_FROM_OTHERS,
        sample.station().key(),
        Optional.of(sample.readings().size() == 1 ? sample.readings().get(0) : mean),
        mean.text()
            + " at \""
            + sample.station().words()
            + "\" is "
            + Amount.of(distance, Unit.MILLIMETRE).to(unit).rounded(unit.decimals()).text()
            + " from the other readings. Read again.");
  }

  private static Optional<Question> repeats(Sample sample, Tool tool) {
    Unit unit = sample.unit();
    if (unit.dimension() != tool.dimension()) {
      return Optional.empty();
    }
    double[] values = sample.readings().stream().mapToDouble(r -> r.in(unit)).toArray();
    double range = Arrays.stream(values).max().orElse(0) - Arrays.stream(values).min().orElse(0);
    double allowed = 2 * (tool.repeat().in(unit) + tool.resolution().in(unit));
    return range > allowed * (1 + 1e-9)
        ? Optional.of(
            Question.of(
                Question.Kind.REPEATS_DIFFER,
                sample.station().key(),
                Optional.empty(),
                "The repeats at \""
                    + sample.station().words()
                    + "\" differ by more than the tool's own repeat. Clean it and read again."))
        : Optional.empty();
  }

  /**
   * Whether a figure printed in inch and millimetre disagrees with itself.
   *
   * @return what is wrong, in a sentence; empty when the pair agrees to the digits printed
   */
  public static Optional<String> findPairFault(Amount inch, Amount millimetre) {
    double one = inch.in(Unit.MILLIMETRE);
    double other = millimetre.in(Unit.MILLIMETRE);
    double step = lastDigit(inch) + lastDigit(millimetre);
    return Math.abs(one - other) <= step
        ? Optional.empty()
        : Optional.of(
            inch.text()
                + " is "
                + inch.to(Unit.MILLIMETRE).rounded(3).text()
                + ", not "
                + millimetre.text()
                + ": which is meant?");
  }

  /** One in the last digit printed, in mm. */
  private static double lastDigit(Amount printed) {
    return new Amount(BigDecimal.ONE.movePointLeft(printed.number().scale()), printed.unit())
        .in(Unit.MILLIMETRE);
  }

  private static boolean isWithin(ReadingPlan plan, Station station, double base) {
    Station.Span span = station.span().orElse(new Station.Span(plan.least(), plan.most()));
    return base >= span.least() && base <= span.most();
  }

  private static boolean isNear(double value, double wanted) {
    return wanted > 0 && Math.abs(value - wanted) <= NEAR * wanted;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
