package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import wherefrom.job.bags.AlwaysNew;
import wherefrom.job.money.Budget;
import wherefrom.job.money.BuyLine;
import wherefrom.job.money.SupplierOffer;

/** Rows of what is bought, offered and arrived. */
final class BuyRows {
  private BuyRows() {}

  /** A line of the list. */
  record Line(BuyLine line) implements Row {
    @Override
    public String text() {
      return Answer.cells(line.words(), line.orderWords(), line.arrivedWords(), line.reason());
    }

    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "what", line.what().words(),
          "size", line.sizeWords(),
          "pieces", line.pieces(),
          "set", line.soldAs().holds(),
          "spares", line.soldAs().spares(),
          "ordered", line.ordered(),
          "arrived", line.arrived(),
          "open", line.open(),
          "inSet", line.inSet(),
          "numbers", line.numbers(),
          "packages", line.packages(),
          "reason", line.reason());
    }
  }

  /** A single gasket, and how many of it the set holds. */
  record InSet(AlwaysNew gasket, int holds) implements Row {
    @Override
    public String text() {
      return Answer.cells(gasket.what(), holds + " of " + gasket.pieces() + " in the set");
    }

    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "what", gasket.article().words(), "wanted", gasket.pieces(), "holds", holds);
    }
  }

  /** What came of a check-in. */
  record Told(String sentence) implements Row {
    @Override
    public String text() {
      return sentence;
    }

    @Override
    public Map<String, Object> fields() {
      return Json.object("sentence", sentence);
    }
  }

  /** What one supplier offers, its sum and what it lacks. */
  record Offer(SupplierOffer offer, Budget budget) implements Row {
    @Override
    public String text() {
      List<String> rows = new ArrayList<>();
      for (SupplierOffer.Priced item : offer.items()) {
        String packed = item.packages() + " × " + item.holds();
        String price = budget.text(item.price());
        rows.add(
            Answer.cells(
                offer.supplier(), item.line().words(), packed, price, budget.text(item.amount())));
      }
      rows.add(Answer.cells(offer.supplier(), "sum", "", "", budget.text(offer.sum())));
      rows.add(Answer.cells(offer.supplier(), "lacks", lacks()));
      return Row.lines(rows);
    }

    private String lacks() {
      String lacks = offer.lacks().stream().map(BuyLine::words).collect(Collectors.joining("; "));
      return lacks.isEmpty() ? "nothing" : lacks;
    }

    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "supplier", offer.supplier(),
          "items", offer.items().stream().map(Offer::item).toList(),
          "sum", offer.sum().text(),
          "lacks", offer.lacks().stream().map(BuyLine::words).toList());
    }

    private static Map<String, Object> item(SupplierOffer.Priced item) {
      return Json.object(
          "what", item.line().what().words(),
          "size", item.line().sizeWords(),
          "packages", item.packages(),
          "holds", item.holds(),
          "price", item.price().text(),
          "amount", item.amount().text());
    }
  }
}
