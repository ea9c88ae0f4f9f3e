package wherefrom.workings.catalogue;

import java.util.List;
import java.util.function.BinaryOperator;
import wherefrom.workings.maths.Dual;

/** Largest, smallest and their difference, for the shape workings. */
final class Spread {
  private Spread() {}

  static Dual largest(List<Dual> readings) {
    return fold(readings, Dual::max);
  }

  static Dual smallest(List<Dual> readings) {
    return fold(readings, Dual::min);
  }

  static Dual range(List<Dual> readings) {
    return largest(readings).minus(smallest(readings));
  }

  private static Dual fold(List<Dual> readings, BinaryOperator<Dual> choice) {
    return readings.stream().reduce(choice).orElseThrow();
  }
}
