package wherefrom.print;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import wherefrom.quantity.Length;

/** The unit in which a stock file gives its lengths. */
enum StockUnit {
  MM("mm"),
  IN("in");

  /** No length in a stock file is larger, in either unit. */
  static final double MOST = 10_000;

  private final String word;

  StockUnit(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }

  Length length(BigDecimal value) {
    return this == MM ? Length.ofMillimetres(value) : Length.ofInches(value);
  }

  static Optional<StockUnit> find(String word) {
    return Arrays.stream(values()).filter(unit -> unit.word.equals(word)).findFirst();
  }
}
