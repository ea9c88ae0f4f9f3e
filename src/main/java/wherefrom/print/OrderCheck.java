package wherefrom.print;

import java.util.Optional;
import wherefrom.job.print.PrintOrder;

/** What an order asks for that its stock cannot give. */
final class OrderCheck {
  private OrderCheck() {}

  /** The dots per inch that an order asks for, or else its stock. */
  static int dpi(PrintOrder order, LabelStock stock) {
    return order.setup().dpi().orElse(stock.dpi());
  }

  /** What is wrong and what to do; empty when it can be printed. */
  static Optional<String> findFault(PrintOrder order, LabelStock stock) {
    int start = order.setup().start();
    int dpi = dpi(order, stock);
    if (start < 1 || start > stock.labelsPerPage()) {
      return Optional.of(
          "The first label to use is number "
              + start
              + ", but the page has "
              + stock.labelsPerPage()
              + ": give a number from 1 to "
              + stock.labelsPerPage()
              + ".");
    }
    if (!PrinterDots.isKnown(dpi)) {
      return Optional.of("Printers have 203, 300 or 600 dots per inch, not " + dpi + ".");
    }
    if (order.faces().isEmpty() && !order.testPage()) {
      return Optional.of("There is nothing to print. Choose at least one tag or card.");
    }
    return LabelPlan.find(stock, dpi).isEmpty()
        ? Optional.of("At " + dpi + " dots per inch no tag that can be read fits this label.")
        : Optional.empty();
  }
}
