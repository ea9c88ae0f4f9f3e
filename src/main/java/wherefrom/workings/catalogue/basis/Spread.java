package wherefrom.workings.catalogue.basis;

import java.util.Comparator;
import java.util.List;
import java.util.function.BinaryOperator;
import wherefrom.workings.maths.Dual;

/** Largest, smallest and their difference, for the shape workings. */
public final class Spread {
  private Spread() {}

  public static Dual largest(List<Dual> readings) {
    return fold(readings, Dual::max);
  }

  public static Dual smallest(List<Dual> readings) {
    return fold(readings, Dual::min);
  }

  /**
   * The largest reading less the smallest, of at least two. They are always two different readings:
   * where all agree, each still has its own uncertainty, as readings that agree do not take the
   * tool's step away (JCGM 100:2008, F.2.2.1).
   */
  public static Dual range(List<Dual> readings) {
    List<Dual> sorted = readings.stream().sorted(Comparator.comparing(Dual::value)).toList();
    return sorted.get(sorted.size() - 1).minus(sorted.get(0));
  }

  private static Dual fold(List<Dual> readings, BinaryOperator<Dual> choice) {
    return readings.stream().reduce(choice).orElseThrow();
  }
}
