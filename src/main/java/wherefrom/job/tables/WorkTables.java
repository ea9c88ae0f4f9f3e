package wherefrom.job.tables;

import java.math.BigDecimal;
import wherefrom.job.EngineJob;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.job.entry.ShopLineBack;
import wherefrom.job.money.CostItem;
import wherefrom.job.money.CostLine;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.shop.MachineShop;
import wherefrom.job.shop.ShopVisit;
import wherefrom.quantity.Amount;
import wherefrom.quantity.JobCurrency;
import wherefrom.quantity.Money;

/** What it costs, and what was at the machine shop. */
final class WorkTables {
  private static final int CENTS = 2;

  private WorkTables() {}

  /** Cost lines, then what is still to buy; without an amount where nobody typed a price. */
  static TidyTable costs(OpenJob job) {
    Rows rows =
        new Rows(
            "costs", "number", "what", "about", "state", "amount", "currency", "pieces", "note");
    MoneyBook book = new MoneyBook(job);
    TidyCell currency = TidyCell.of(book.findTender().map(JobCurrency::letters).orElse(""));
    for (CostLine line : book.lines()) {
      rows.add(
          TidyCell.of(line.number()),
          TidyCell.of(line.what().words()),
          TidyCell.of(line.about()),
          TidyCell.of(line.state().words()),
          amount(line.amount()),
          currency,
          TidyCell.NONE,
          TidyCell.of(line.note()));
    }
    for (CostItem item : book.toBuy()) {
      rows.add(
          TidyCell.NONE,
          TidyCell.of(item.what().words()),
          TidyCell.NONE,
          TidyCell.of("to buy"),
          item.priced() ? amount(item.amount()) : TidyCell.NONE,
          currency,
          TidyCell.of(item.pieces()),
          TidyCell.of(item.because()));
    }
    return rows.table();
  }

  private static TidyCell amount(Money money) {
    return TidyCell.of(BigDecimal.valueOf(money.cents(), CENTS));
  }

  /** A row a part or a line of a slip. */
  static TidyTable shop(OpenJob job) {
    Rows rows =
        new Rows(
            "shop",
            "visit",
            "line",
            "sent_utc",
            "what",
            "pieces",
            "wanted",
            "size",
            "within",
            "unit",
            "back");
    for (ShopVisit visit : new MachineShop(job).visits()) {
      for (ShopVisit.Sent sent : visit.parts()) {
        int pieces = sent.part().pieces();
        rows.add(
            TidyCell.of(visit.number()),
            TidyCell.NONE,
            TidyCell.of(visit.sent()),
            TidyCell.of(sent.part().words()),
            TidyCell.of(pieces),
            TidyCell.of(sent.wanted()),
            TidyCell.NONE,
            TidyCell.NONE,
            TidyCell.NONE,
            TidyCell.of(sent.back() ? pieces : 0));
      }
      visit.lines().forEach(line -> line(rows, visit, line));
    }
    return rows.table();
  }

  private static void line(Rows rows, ShopVisit visit, ShopVisit.Line line) {
    ShopLineAdded asked = line.line();
    rows.add(
        TidyCell.of(visit.number()),
        TidyCell.of(asked.line()),
        TidyCell.of(visit.sent()),
        TidyCell.of(asked.what()),
        TidyCell.of(asked.count()),
        TidyCell.of(asked.wanted()),
        TidyCell.of(asked.target().map(Amount::number)),
        TidyCell.of(asked.tolerance().map(Amount::number)),
        TidyCell.of(asked.target().map(size -> size.unit().symbol()).orElse("")),
        TidyCell.of(line.back()));
  }

  /** A row a count of a line that came back, with the size that was measured then. */
  static TidyTable returns(EngineJob job) {
    Rows rows = new Rows("returns", "visit", "line", "pieces", "size", "unit", "done", "utc");
    for (LoggedEntry logged : job.standing()) {
      if (logged.entry() instanceof ShopLineBack back) {
        rows.add(
            TidyCell.of(back.visit()),
            TidyCell.of(back.line()),
            TidyCell.of(back.count()),
            TidyCell.of(back.size().map(Amount::number)),
            TidyCell.of(back.size().map(size -> size.unit().symbol()).orElse("")),
            TidyCell.of(back.done()),
            TidyCell.of(logged.time()));
      }
    }
    return rows.table();
  }
}
