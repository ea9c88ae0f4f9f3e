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
import wherefrom.quantity.JobCurrency;
import wherefrom.quantity.Money;

/** Rows of money. */
final class MoneyRows {
  private MoneyRows() {}

  /** Where the budget is. */
  record Standing(Budget budget, String sentence) implements Row {
    static Standing of(Budget budget) {
      return new Standing(budget, budget.sentence());
    }

    @Override
    public String text() {
      return sentence;
    }

    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "budget", budget.limit().text(),
          "currency", budget.currency(),
          "quoted", budget.quoted().text(),
          "committed", budget.committed().text(),
          "paid", budget.paid().text(),
          "avoided", budget.avoided().text(),
          "planned", budget.planned().text(),
          "toBuy", budget.toBuy().text(),
          "contingency", budget.contingency().text(),
          "total", budget.total().text(),
          "left", budget.left().text(),
          "sentence", sentence);
    }
  }

  /** A cost line. */
  record Line(Budget budget, CostLine line) implements Row {
    @Override
    public String text() {
      String amount = budget.text(line.amount());
      String state = line.state().words();
      return Answer.cells(
          line.number(), line.what().words(), line.about(), state, amount, line.note());
    }

    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "line", line.number(),
          "what", line.what().words(),
          "about", line.about(),
          "state", line.state().name().toLowerCase(Locale.ROOT),
          "amount", line.amount().text(),
          "plan", line.plan(),
          "note", line.note());
    }
  }

  /** Something with its price, if one was typed. */
  record Item(String what, int pieces, boolean priced, String amount, String rule) {
    static List<Item> all(List<CostItem> items) {
      return items.stream().map(Item::of).toList();
    }

    private static Item of(CostItem item) {
      return new Item(
          item.what().words(), item.pieces(), item.priced(), item.amount().text(), item.because());
    }
  }

  /** The whole book: its lines, what is to buy, where the budget is. */
  record Book(Budget budget, List<Line> lines, List<CostItem> toBuy) implements Row {
    static Book of(MoneyBook book) {
      Budget budget = book.budget();
      List<Line> lines = book.lines().stream().map(line -> new Line(budget, line)).toList();
      return new Book(budget, lines, book.toBuy());
    }

    @Override
    public String text() {
      List<String> rows = new ArrayList<>();
      lines.forEach(line -> rows.add(line.text()));
      toBuy.stream()
          .filter(CostItem::priced)
          .forEach(item -> rows.add(Answer.cells("-", item.sentence(), "", "to buy")));
      rows.add(budget.sentence());
      return Row.lines(rows);
    }

    @Override
    public Map<String, Object> fields() {
      Map<String, Object> fields = Standing.of(budget).fields();
      fields.put("lines", lines);
      fields.put("items", Item.all(toBuy));
      return fields;
    }
  }

  /** The price of one. */
  record Price(String what, Money price, JobCurrency tender) implements Row {
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
          new Standing(cost.withIt(), cost.total()),
          Item.all(cost.lines()),
          Item.all(cost.perhaps()),
          cost.sum().text(),
          cost.atLeast(),
          new Row.Beside(cost.sentence()));
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
