package wherefrom.workings.catalogue;

import java.util.List;
import java.util.Optional;
import wherefrom.quantity.Unit;
import wherefrom.workings.Source;
import wherefrom.workings.maths.Dual;

/** The usual steps parts are made in, over or under the standard size. */
enum SizeSteps {
  UNDERSIZES(List.of("0.010", "0.020", "0.030"), List.of("0.25", "0.50", "0.75")),
  OVERSIZES(
      List.of("0.010", "0.020", "0.030", "0.040", "0.060"),
      List.of("0.25", "0.50", "0.75", "1.00", "1.50"));

  private static final Dual MM_PER_INCH = Dual.of("25.4");

  @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
  private final List<String> inches;

  @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
  private final List<String> millimetres;

  SizeSteps(List<String> inches, List<String> millimetres) {
    this.inches = inches;
    this.millimetres = millimetres;
  }

  Source source() {
    return this == OVERSIZES
        ? Source.commonPractice()
        : Source.published("TM 5-3805-262-34, 4-24: 0.010 to 0.030 in; metric steps from memory");
  }

  /** The smallest step that is at least so much, in mm; zero where nothing is needed. */
  Optional<Dual> findStep(Dual needed, Unit lengthUnit) {
    Dual none = Dual.of(0);
    if (!none.isLessThan(needed)) {
      return Optional.of(none);
    }
    boolean inch = lengthUnit == Unit.INCH;
    return (inch ? inches : millimetres)
        .stream()
            .map(Dual::of)
            .map(step -> inch ? step.times(MM_PER_INCH) : step)
            .filter(step -> !step.isLessThan(needed))
            .findFirst();
  }
}
