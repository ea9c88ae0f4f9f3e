package wherefrom.job.tables;

import java.math.BigDecimal;
import wherefrom.job.OpenJob;
import wherefrom.job.money.BuyLine;
import wherefrom.job.money.Buying;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.money.SupplierOffer;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.quantity.Amount;
import wherefrom.quantity.JobCurrency;
import wherefrom.quantity.Money;

/** The buying list as it is sold, and what suppliers ask for it. */
final class BuyingTables {
  private static final int CENTS = 2;

  private BuyingTables() {}

  /** A row a line of the list; how far its size is from standard stands in step and unit. */
  static TidyTable buying(OpenJob job) {
    Rows rows =
        new Rows(
            "buying", "what", "size", "pieces", "set", "spares", "ordered", "arrived", "in-set",
            "open", "numbers", "reason", "step", "unit");
    for (BuyLine line : new Buying(job.state()).lines()) {
      rows.add(
          TidyCell.of(line.what().words()),
          TidyCell.of(line.sizeWords()),
          TidyCell.of(line.pieces()),
          TidyCell.of(line.soldAs().holds()),
          TidyCell.of(line.soldAs().spares()),
          TidyCell.of(line.ordered() ? "yes" : "no"),
          TidyCell.of(line.arrived()),
          TidyCell.of(line.inSet()),
          TidyCell.of(line.open()),
          TidyCell.of(String.join("; ", line.numbers())),
          TidyCell.of(line.reason()),
          TidyCell.of(line.size().findOff().map(Amount::number)),
          TidyCell.of(line.size().findOff().map(off -> off.unit().symbol()).orElse("")));
    }
    return rows.table();
  }

  /** A row a line that a supplier has a price for. */
  static TidyTable offers(OpenJob job) {
    Rows rows =
        new Rows(
            "offers", "supplier", "what", "size", "packages", "holds", "price", "sum", "currency");
    String currency = new MoneyBook(job).findTender().map(JobCurrency::letters).orElse("");
    for (SupplierOffer offer : new Buying(job.state()).offers()) {
      for (SupplierOffer.Priced one : offer.items()) {
        rows.add(
            TidyCell.of(offer.supplier()),
            TidyCell.of(one.line().what().words()),
            TidyCell.of(one.line().sizeWords()),
            TidyCell.of(one.packages()),
            TidyCell.of(one.holds()),
            amount(one.price()),
            amount(one.amount()),
            TidyCell.of(currency));
      }
    }
    return rows.table();
  }

  private static TidyCell amount(Money money) {
    return TidyCell.of(BigDecimal.valueOf(money.cents(), CENTS));
  }
}
