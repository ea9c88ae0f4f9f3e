package wherefrom.workings.catalogue.size;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.Source;
import wherefrom.workings.maths.DualNumber;

/** The usual steps parts are made in, over or under the standard size. */
public enum SizeSteps {
  UNDERSIZES(List.of("0.010", "0.020", "0.030"), List.of("0.25", "0.50", "0.75")),
  OVERSIZES(
      List.of("0.010", "0.020", "0.030", "0.040", "0.060"),
      List.of("0.25", "0.50", "0.75", "1.00", "1.50"));

  /** How steps are spoken of (common practice, no source). */
  static final String COUNTED =
      "Steps count from the standard size, never from the last cut: ten under is 0.010 in under"
          + " standard.";

  private static final DualNumber MM_PER_INCH = DualNumber.of("25.4");

  /** A cut this near to a step is meant to be that step (common practice, no source). */
  private static final String NEAR_INCH = "0.002";

  private static final String NEAR_MILLIMETRE = "0.05";

  @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
  private final List<String> inches;

  @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
  private final List<String> millimetres;

  SizeSteps(List<String> inches, List<String> millimetres) {
    this.inches = inches;
    this.millimetres = millimetres;
  }

  public Source source() {
    return this == OVERSIZES
        ? Source.commonPractice()
        : Source.published("TM 5-3805-262-34, 4-24: 0.010 to 0.030 in; metric steps from memory");
  }

  /** The steps in inch or in millimetre, the smallest first; standard is not among them. */
  public List<Amount> list(Unit lengthUnit) {
    Unit unit = lengthUnit == Unit.INCH ? Unit.INCH : Unit.MILLIMETRE;
    return texts(unit).stream().map(step -> Amount.of(step, unit)).toList();
  }

  /** How far from a step a cut may be that is meant to be that step. */
  public static Amount near(Unit lengthUnit) {
    return lengthUnit == Unit.INCH
        ? Amount.of(NEAR_INCH, Unit.INCH)
        : Amount.of(NEAR_MILLIMETRE, Unit.MILLIMETRE);
  }

  /** The step that a cut so far from standard is meant to be: 0 for standard. */
  public Optional<Amount> findNear(Amount off) {
    Amount standard = new Amount(BigDecimal.ZERO, off.unit());
    return Stream.concat(Stream.of(standard), list(off.unit()).stream())
        .filter(step -> isNear(step, off))
        .findFirst();
  }

  /** The step of the same length, in whichever unit it is made: 0.508 mm is 0.020 in. */
  public Optional<Amount> findExact(Amount off) {
    return Stream.of(Unit.INCH, Unit.MILLIMETRE)
        .flatMap(unit -> list(unit).stream())
        .filter(step -> step.inBase().compareTo(off.inBase()) == 0)
        .findFirst();
  }

  private static boolean isNear(Amount step, Amount off) {
    BigDecimal apart = off.inBase().subtract(step.inBase()).abs();
    return apart.compareTo(near(off.unit()).inBase()) <= 0;
  }

  private List<String> texts(Unit lengthUnit) {
    return lengthUnit == Unit.INCH ? inches : millimetres;
  }

  /** The smallest step that is at least so much, in mm; zero where nothing is needed. */
  Optional<DualNumber> findStep(DualNumber needed, Unit lengthUnit) {
    DualNumber none = DualNumber.of(0);
    if (!none.isLessThan(needed)) {
      return Optional.of(none);
    }
    return steps(lengthUnit).stream().filter(step -> !step.isLessThan(needed)).findFirst();
  }

  /**
   * The smallest step that cleans up a surface worn since its last cut, in mm, counted from the
   * standard size.
   *
   * @param cut how far from standard it was cut, in mm; zero where it never was
   * @param wear how far it is worn from there, in mm; taken as one-sided, so twice as much comes
   *     off
   */
  Optional<DualNumber> findStep(DualNumber cut, DualNumber wear, Unit lengthUnit) {
    DualNumber worn = wear.max(DualNumber.of(0)).times(2);
    return findStep(meant(cut, lengthUnit).plus(worn), lengthUnit);
  }

  /** A journal ground to 2.2299 in from 2.2400 in is ten under, not eleven. */
  private DualNumber meant(DualNumber cut, Unit lengthUnit) {
    DualNumber near =
        inMillimetres(lengthUnit == Unit.INCH ? NEAR_INCH : NEAR_MILLIMETRE, lengthUnit);
    return Stream.concat(Stream.of(DualNumber.of(0)), steps(lengthUnit).stream())
        .filter(step -> !near.isLessThan(step.minus(cut).abs()))
        .findFirst()
        .orElse(cut);
  }

  private List<DualNumber> steps(Unit lengthUnit) {
    return texts(lengthUnit).stream().map(step -> inMillimetres(step, lengthUnit)).toList();
  }

  private static DualNumber inMillimetres(String text, Unit lengthUnit) {
    DualNumber figure = DualNumber.of(text);
    return lengthUnit == Unit.INCH ? figure.times(MM_PER_INCH) : figure;
  }
}
