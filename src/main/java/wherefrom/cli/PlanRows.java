package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import wherefrom.job.StandingRule;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.money.PlanCost;
import wherefrom.parts.Place;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.Consequence;

/** Rows of plans, changes and the checks that follow. */
final class PlanRows {
  private PlanRows() {}

  /** What follows from a change. */
  record Follows(Consequence one) implements Row {
    @Override
    public String text() {
      return Answer.cells(one.headline(), one.ruleWords(), one.sentence(), one.source());
    }

    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "rule", one.ruleWords(),
          "key", CheckName.shown(one.key()),
          "severity", one.severity().word(),
          "effect", one.effect().words(),
          "subject", one.subject(),
          "pieces", one.pieces(),
          "places", one.places().stream().map(Place::words).toList(),
          "sentence", one.sentence(),
          "because", one.reasons(),
          "source", one.source());
    }
  }

  /** A change with all that follows, and its money. */
  record Whole(
      int plan,
      String change,
      String contradiction,
      List<Follows> consequences,
      List<MoneyRows.Item> items,
      List<MoneyRows.Item> perhaps,
      String sum,
      Row.Beside told)
      implements Row {
    static Whole of(
        String head,
        int plan,
        Change change,
        String against,
        List<Consequence> consequences,
        OpenedJob bench) {
      PlanCost cost = new MoneyBook(bench.job()).effect(change);
      List<String> lines = new ArrayList<>(List.of(head + ": " + change.words(), against));
      List<Follows> follows = consequences.stream().map(Follows::new).toList();
      follows.forEach(each -> lines.add(each.text()));
      lines.add(Answer.cells("money", cost.sentence()));
      return new Whole(
          plan,
          change.words(),
          against,
          follows,
          MoneyRows.Item.all(cost.lines()),
          MoneyRows.Item.all(cost.perhaps()),
          cost.sum().text(),
          new Row.Beside(Row.lines(lines)));
    }
  }

  /** A change of the list. */
  record Listed(int plan, String state, String change, String sum, long unpriced, Row.Beside cost)
      implements Row {
    static Listed of(OpenedJob bench, int plan, String state, Change change) {
      MoneyBook book = new MoneyBook(bench.job());
      PlanCost cost = book.effect(change);
      long unpriced = cost.lines().stream().filter(item -> !item.priced()).count();
      Row.Beside sum = new Row.Beside(book.budget().text(cost.sum()));
      return new Listed(plan, state, change.words(), cost.sum().text(), unpriced, sum);
    }

    @Override
    public String text() {
      String without = unpriced == 0 ? "" : ", " + unpriced + " without a price";
      return Answer.cells(plan == 0 ? "-" : plan, state, change, cost.text() + without);
    }
  }

  /** A check, or what else a rule asks. */
  record Check(Follows follows, String state) implements Row {
    static Check of(StandingRule rule) {
      Consequence one = rule.consequence();
      String answered = rule.answer().map(given -> given.look().word()).orElse("open");
      return new Check(new Follows(one), one.effect().isCheck() ? answered : one.effect().words());
    }

    @Override
    public String text() {
      Consequence one = follows.one();
      return Answer.cells(
          CheckName.shown(one.key()), state, one.sentence(), one.ruleWords(), one.source());
    }
  }

  /** A check that was answered. */
  record Answered(String check, String answer, String sentence) implements Row {
    @Override
    public String text() {
      return sentence;
    }
  }

  /** A plan that was dropped. */
  record Dropped(int dropped) implements Row {
    @Override
    public String text() {
      return "Plan " + dropped + " is dropped.";
    }
  }
}
