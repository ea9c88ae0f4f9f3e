package wherefrom.job.record;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.GoodsArrived;
import wherefrom.job.money.Budget;
import wherefrom.job.money.BuyLine;
import wherefrom.job.money.Buying;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.money.SupplierOffer;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;

/**
 * What is bought: the list with what is here of it, the offers, and what was checked in. Before the
 * first of these it says no more than the list of costs does, and stays away.
 */
final class RecordBuying {
  private RecordBuying() {}

  static RecordSection of(OpenJob job) {
    Buying buying = new Buying(job.state());
    Budget budget = new MoneyBook(job).budget();
    List<RecordSection.Row> rows = new ArrayList<>();
    if (!buying.offers().isEmpty() || !buying.arrivals().isEmpty()) {
      for (BuyLine line : buying.lines()) {
        rows.add(row(false, line.words(), line.orderWords(), line.arrivedWords(), line.reason()));
      }
    }
    for (SupplierOffer offer : buying.offers()) {
      rows.add(
          row(false, "Offer: " + offer.supplier(), budget.text(offer.sum()), "", lacks(offer)));
    }
    for (GoodsArrived came : buying.arrivals()) {
      String what = came.pieces() + " " + came.what().words();
      String size = came.measured().isEmpty() ? came.size().words() : "measured " + came.measured();
      rows.add(row(!came.right(), what, "came", came.right() ? "right" : "WRONG", size));
    }
    return new RecordSection(
        RecordTable.BUYING,
        List.of("what", "to buy", "here", "note"),
        rows,
        "No offer and no arrival was noted.");
  }

  private static String lacks(SupplierOffer offer) {
    String lacks = offer.lacks().stream().map(BuyLine::words).collect(Collectors.joining("; "));
    return lacks.isEmpty() ? "lacks nothing" : "lacks " + lacks;
  }

  private static RecordSection.Row row(boolean marked, String... cells) {
    return new RecordSection.Row(List.of(cells), marked);
  }
}
