package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wherefrom.job.money.Budget;
import wherefrom.job.money.CostItem;
import wherefrom.job.money.CostLine;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.money.PlanCost;
import wherefrom.quantity.Money;
import wherefrom.quantity.Tender;

/** Rows of money. */
final class MoneyRows {
  private MoneyRows() {}

  /** Where the budget is. */
  record Standing(
      String budget,
      String currency,
      String quoted,
      String committed,
      String paid,
      String avoided,
      String planned,
      String toBuy,
      String contingency,
      String total,
      String left,
      String sentence)
      implements Row {
    static Standing of(Budget budget) {
      return of(budget, budget.sentence());
    }

    /**
     * @param sentence said of it
     */
    static Standing of(Budget budget, String sentence) {
      return new Standing(
          budget.limit().text(),
          budget.currency(),
          budget.quoted().text(),
          budget.committed().text(),
          budget.paid().text(),
          budget.avoided().text(),
          budget.planned().text(),
          budget.toBuy().text(),
          budget.contingency().text(),
          budget.total().text(),
          budget.left().text(),
          sentence);
    }

    @Override
    public String text() {
      return sentence;
    }
  }

  /** A cost line. */
  record Line(
      int line, String what, String about, String state, String amount, int plan, String note) {
    static Line of(CostLine line) {
      return new Line(
          line.number(),
          line.what(),
          line.about(),
          line.state().name().toLowerCase(Locale.ROOT),
          line.amount().text(),
          line.plan(),
          line.note());
    }
  }

  /** Something with its price, if one was typed. */
  record Item(String what, int pieces, boolean priced, String amount, String rule) {
    static List<Item> all(List<CostItem> items) {
      return items.stream().map(Item::of).toList();
    }

    private static Item of(CostItem item) {
      return new Item(
          item.what(), item.pieces(), item.priced(), item.amount().text(), item.because());
    }
  }

  /** The whole book: its lines, what is to buy, where the budget is. */
  record Book(Budget budget, List<CostLine> lines, List<CostItem> toBuy) implements Row {
    static Book of(MoneyBook book) {
      return new Book(book.budget(), book.lines(), book.toBuy());
    }

    @Override
    public String text() {
      List<String> rows = new ArrayList<>();
      for (CostLine line : lines) {
        String amount = budget.text(line.amount());
        rows.add(
            Answer.cells(
                line.number(), line.what(), line.about(), line.state().words(), amount,
                line.note()));
      }
      toBuy.stream()
          .filter(CostItem::priced)
          .forEach(item -> rows.add(Answer.cells("-", item.sentence(), "", "to buy")));
      rows.add(budget.sentence());
      return String.join("\n", rows);
    }

    @Override
    public Map<String, Object> fields() {
      Map<String, Object> fields = Standing.of(budget).fields();
      fields.put("lines", lines.stream().map(Line::of).toList());
      fields.put("items", Item.all(toBuy));
      return fields;
    }
  }

  /** The price of one. */
  record Price(String what, Money price, Tender tender) implements Row {
    @Override
    public String text() {
      return Answer.cells(what, tender.text(price));
    }

    @Override
    public Map<String, Object> fields() {
      return Json.object("what", what, "amount", price.text());
    }
  }

  /** What a change would cost. */
  record Effect(
      Standing standing,
      List<Item> items,
      List<Item> perhaps,
      String sum,
      boolean atLeast,
      Row.Beside told)
      implements Row {
    static Effect of(PlanCost cost) {
      return new Effect(
          Standing.of(cost.withIt(), cost.total()),
          Item.all(cost.lines()),
          Item.all(cost.perhaps()),
          cost.sum().text(),
          cost.atLeast(),
          new Row.Beside(cost.sentence()));
    }

    @Override
    public String text() {
      return told.text();
    }
  }

  /** A table that was written. */
  record Table(String file, int lines) implements Row {
    @Override
    public String text() {
      return file + ": lines " + lines;
    }
  }

  /** Lines that came from a table. */
  record Added(Standing standing, int added) implements Row {
    @Override
    public String text() {
      return "Lines added: " + added + ". " + standing.sentence();
    }
  }
}
