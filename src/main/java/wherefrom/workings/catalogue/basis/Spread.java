package wherefrom.workings.catalogue.basis;

import java.util.Comparator;
import java.util.List;
import java.util.function.BinaryOperator;
import wherefrom.workings.maths.DualNumber;

/** Largest, smallest and their difference, for the shape workings. */
public final class Spread {
  private Spread() {}

  public static DualNumber largest(List<DualNumber> readings) {
    return fold(readings, DualNumber::max);
  }

  public static DualNumber smallest(List<DualNumber> readings) {
    return fold(readings, DualNumber::min);
  }

  /**
   * The largest reading less the smallest, of at least two. They are always two different readings:
   * where all agree, each still has its own uncertainty, as readings that agree do not take the
   * tool's step away (JCGM 100:2008, F.2.2.1).
   */
  public static DualNumber range(List<DualNumber> readings) {
    List<DualNumber> sorted =
        readings.stream().sorted(Comparator.comparing(DualNumber::value)).toList();
    return sorted.get(sorted.size() - 1).minus(sorted.get(0));
  }

  private static DualNumber fold(List<DualNumber> readings, BinaryOperator<DualNumber> choice) {
    return readings.stream().reduce(choice).orElseThrow();
  }
}
