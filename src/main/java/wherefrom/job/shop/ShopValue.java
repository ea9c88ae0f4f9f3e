package wherefrom.job.shop;

import wherefrom.job.entry.ShopLineAdded;
import wherefrom.quantity.Amount;

/** A size that came back, held against the size that was wanted. */
record ShopValue(ShopLineAdded line, Amount size) {

  private Amount off(Amount target) {
    return new Amount(size.to(target.unit()).number().subtract(target.number()), target.unit());
  }

  /** Whether it is so far from what was wanted that the unit must be another. */
  boolean isMixedUp() {
    return line.target()
        .map(target -> size.inBase().doubleValue() / target.inBase().doubleValue())
        .map(ratio -> ratio > 20 || ratio < 0.05)
        .orElse(false);
  }

  /** Whether nothing speaks against taking it home. */
  boolean isGood() {
    return line.target()
        .flatMap(target -> line.tolerance().map(within -> isWithin(target, within)))
        .orElse(true);
  }

  private boolean isWithin(Amount target, Amount within) {
    return off(target).number().abs().compareTo(within.number()) <= 0;
  }

  /** In a sentence; where nothing was wanted, only the size. */
  String words() {
    return line.target().map(this::words).orElse("Measured " + size.text() + ".");
  }

  private String words(Amount target) {
    String measured = "Measured " + size.text() + ", wanted " + target.text() + ": ";
    if (isMixedUp()) {
      return measured + "inch and millimeter may be mixed up. Nothing is counted. Read it again.";
    }
    if (line.tolerance().isEmpty()) {
      return measured + "off by " + off(target).text() + ".";
    }
    String within = "within " + line.tolerance().get().text() + ".";
    return isGood()
        ? measured + within
        : measured + "NOT " + within + " Do not take it home. Talk to the shop.";
  }
}
