package wherefrom.job;

import java.math.BigDecimal;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;

/** A size that came back, held against the size that was wanted. */
final class ShopValue {
  private ShopValue() {}

  /** In a sentence; where nothing was wanted, only the size. */
  static String words(ShopLineAdded line, Amount size) {
    if (line.target().isEmpty()) {
      return "Measured " + size.text() + ".";
    }
    Unit unit = Unit.find(line.unit()).orElseThrow();
    Amount target = new Amount(new BigDecimal(line.target()), unit);
    Amount off = new Amount(size.to(unit).number().subtract(target.number()), unit);
    String measured = "Measured " + size.text() + ", wanted " + target.text() + ": ";
    double ratio = size.inBase().doubleValue() / target.inBase().doubleValue();
    if (ratio > 20 || ratio < 0.05) {
      return measured + "inch and millimetre may be mixed up. Read again.";
    }
    if (line.tolerance().isEmpty()) {
      return measured + "off by " + off.text() + ".";
    }
    boolean good = off.number().abs().compareTo(new BigDecimal(line.tolerance())) <= 0;
    return measured
        + (good ? "within " : "NOT within ")
        + line.tolerance()
        + " "
        + line.unit()
        + (good ? "." : ". Do not take it home: talk to the shop.");
  }
}
