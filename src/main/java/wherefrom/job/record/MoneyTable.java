package wherefrom.job.record;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.OpenJob;
import wherefrom.job.money.Budget;
import wherefrom.job.money.CostItem;
import wherefrom.job.money.CostLine;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;
import wherefrom.text.Words;

/** The record's table of money: what is noted, what is to be bought, and the budget. */
public final class MoneyTable {
  private final MoneyBook book;
  private final Budget budget;
  private final List<RecordSection.Row> rows = new ArrayList<>();

  private MoneyTable(OpenJob job) {
    book = new MoneyBook(job);
    budget = book.budget();
  }

  public static RecordSection of(OpenJob job) {
    return new MoneyTable(job).section();
  }

  private RecordSection section() {
    for (CostLine line : book.lines()) {
      String amount = budget.text(line.amount());
      row(false, line.what().words(), line.state().words(), amount, line.note());
    }
    toBuy();
    boolean limited = budget.limit().cents() > 0;
    if (!rows.isEmpty() || limited) {
      boolean over = limited && budget.left().cents() < 0;
      row(over, "Budget", "", budget.text(budget.limit()), budget.sentence());
    }
    return new RecordSection(
        RecordTable.MONEY, List.of("what", "state", "amount", "note"), rows, "No cost was noted.");
  }

  /** What has no price counts nothing: it stands in one row, as the total is the least. */
  private void toBuy() {
    List<String> unpriced = new ArrayList<>();
    for (CostItem item : book.toBuy()) {
      String what = item.pieces() + " × " + item.what().words();
      if (item.priced()) {
        row(false, what, "to buy", budget.text(item.amount()), item.why());
      } else {
        unpriced.add(what);
      }
    }
    if (!unpriced.isEmpty()) {
      String things = Words.count(unpriced.size(), "thing", "things");
      row(false, things, "to buy", "no price typed", String.join("; ", unpriced));
    }
  }

  private void row(boolean open, String... cells) {
    rows.add(new RecordSection.Row(List.of(cells), open));
  }
}
