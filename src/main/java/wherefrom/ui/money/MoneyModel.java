package wherefrom.ui.money;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import wherefrom.job.OpenJob;
import wherefrom.job.change.PlannedChange;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.CostState;
import wherefrom.job.money.Budget;
import wherefrom.job.money.CostItem;
import wherefrom.job.money.CostLine;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.money.PlanCost;
import wherefrom.job.money.ShopBill;
import wherefrom.parts.PartKind;
import wherefrom.quantity.JobCurrency;
import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.Goods;
import wherefrom.text.UsualWords;

/** The money of the open job as the window shows it. */
final class MoneyModel {
  /** What rebuilds are charged for, besides parts (common practice, no source). */
  static final List<String> SERVICES =
      List.of(
          "cleaning",
          "crack and pressure test",
          ShopBill.CRANK_GROUND.words(),
          ShopBill.BORED_AND_HONED.words(),
          ShopBill.HEADS_REWORKED.words(),
          Goods.GASKET_SET.words(),
          "oil pump",
          "tools",
          "freight",
          "oil, filter, consumables");

  private static final String NO_AMOUNT = "No amount is noted yet.";

  /** So many things without a price are named. */
  private static final int NAMED = 3;

  /** One of the sums that make up the total, or beside it. */
  record Sum(String words, Money money) {}

  private final OpenJob job;
  private final Locale locale;
  private Optional<Change> asked = Optional.empty();

  MoneyModel(OpenJob job, Locale locale) {
    this.job = job;
    this.locale = locale;
  }

  private MoneyBook book() {
    return new MoneyBook(job);
  }

  JobCurrency tender() {
    return book().tender(locale);
  }

  Budget budget() {
    return book().budget();
  }

  String text(Money money) {
    return tender().text(money);
  }

  /** The cost lines, the latest first. */
  List<CostLine> lines() {
    List<CostLine> lines = new ArrayList<>(book().lines());
    Collections.reverse(lines);
    return lines;
  }

  /** What the total is made of, then what reuse saves; sums of nothing are left out. */
  List<Sum> sums() {
    Budget budget = budget();
    List<Sum> sums = new ArrayList<>();
    sums.add(new Sum("paid", budget.paid()));
    sums.add(new Sum("committed", budget.committed()));
    sums.add(new Sum("quoted", budget.quoted()));
    sums.add(new Sum("plans", budget.planned()));
    sums.add(new Sum("still to buy", budget.toBuy()));
    sums.add(new Sum("set aside, " + budget.contingencyPercent() + " %", budget.contingency()));
    sums.removeIf(sum -> sum.money().cents() == 0);
    return sums;
  }

  /** {@code 96.00 EUR avoided by reuse}; empty where nothing is. */
  String avoided() {
    Money avoided = budget().avoided();
    return avoided.cents() == 0 ? "" : text(avoided) + " saved by reuse.";
  }

  /** Whether a budget, a price or a cost is noted. */
  boolean isBegun() {
    return !budget().currency().isEmpty();
  }

  /** The budget in a sentence; it says where a price is missing. */
  String sentence() {
    if (!isBegun()) {
      return NO_AMOUNT;
    }
    return budget().sentence();
  }

  /** The same in few words. */
  String brief() {
    if (!isBegun()) {
      return NO_AMOUNT;
    }
    return budget().brief();
  }

  /** What is decided or planned to be bought and counts nothing yet, as no price is typed. */
  List<CostItem> unpriced() {
    return book().toBuy().stream().filter(item -> !item.priced()).toList();
  }

  /** {@code 16 × lifters, 1 × cam}; empty where everything has a price. */
  String unpricedWords() {
    String things =
        unpriced().stream()
            .limit(NAMED)
            .map(item -> item.pieces() + " ×\u00a0" + item.what().words())
            .collect(Collectors.joining(", "));
    int more = unpriced().size() - NAMED;
    return things + (more > 0 ? " and " + more + " more" : "");
  }

  /** What can be noted: the tracked kinds, then services. */
  UsualWords subjects() {
    List<String> subjects = new ArrayList<>();
    job.state().kinds().stream().sorted().map(PartKind::plural).forEach(subjects::add);
    subjects.addAll(SERVICES);
    return UsualWords.orOther(subjects);
  }

  String note(String what, CostState state, String amount, int plan) {
    MoneyBook book = book();
    return said(book.begin(locale, () -> book.note(0, what, about(what), state, amount, plan, "")));
  }

  /** The key of a kind of part; empty for a service. */
  private static String about(String what) {
    return Article.read(what).findGoods().flatMap(Goods::findKind).map(PartKind::key).orElse("");
  }

  String amount(CostLine line, String amount) {
    return said(
        book()
            .note(
                line.number(),
                line.what().id(),
                line.about(),
                line.state(),
                amount,
                line.plan(),
                line.note()));
  }

  String noteWords(CostLine line, String words) {
    return said(
        book()
            .note(
                line.number(),
                line.what().id(),
                line.about(),
                line.state(),
                line.amount().text(),
                line.plan(),
                words));
  }

  String move(CostLine line, CostState state) {
    return said(book().move(line.number(), state));
  }

  String drop(CostLine line, String reason) {
    return said(book().drop(line.number(), reason));
  }

  String setBudget(String amount) {
    Budget now = budget();
    int percent = now.currency().isEmpty() ? MoneyBook.CONTINGENCY : now.contingencyPercent();
    return said(book().setBudget(amount, percent, tender().letters()));
  }

  String setContingency(String percent) {
    int typed = percent.isEmpty() ? -1 : Integer.parseInt(percent);
    String limit = tender().figure(budget().limit());
    return said(book().setBudget(limit, typed, tender().letters()));
  }

  String setCurrency(String letters) {
    Budget now = budget();
    int percent = now.currency().isEmpty() ? MoneyBook.CONTINGENCY : now.contingencyPercent();
    // As many decimals as the other currency has: only what is less than its coin is rounded.
    String limit = JobCurrency.find(letters).orElseGet(this::tender).figure(now.limit());
    return said(book().setBudget(limit, percent, letters));
  }

  private static String said(MoneyBook.Answer answer) {
    return answer instanceof MoneyBook.Answer.Refused refused
        ? refused.sentence()
        : ((MoneyBook.Answer.Kept) answer).budget().sentence();
  }

  /** What can have a price: tracked kinds, and what changes ask for; with the price where known. */
  Map<Article, Optional<Money>> prices() {
    Map<Article, Optional<Money>> prices = new TreeMap<>();
    job.state()
        .kinds()
        .forEach(kind -> prices.put(new Article.Known(Goods.of(kind)), Optional.empty()));
    book().toBuy().forEach(item -> prices.put(item.what(), Optional.empty()));
    asked.ifPresent(change -> book().effect(change).lines().forEach(item -> noPrice(prices, item)));
    asked.ifPresent(
        change -> book().effect(change).perhaps().forEach(item -> noPrice(prices, item)));
    book().prices().forEach((what, price) -> prices.put(what, Optional.of(price)));
    return prices;
  }

  private static void noPrice(Map<Article, Optional<Money>> prices, CostItem item) {
    prices.put(item.what(), Optional.empty());
  }

  String setPrice(Article what, String amount) {
    MoneyBook book = book();
    return said(book.begin(locale, () -> book.setPrice(what, amount)));
  }

  List<PlannedChange> plans() {
    return new Planning(job).plans();
  }

  /** Work that can be planned, wherever on the engine it can be. */
  List<Change> changes() {
    List<Change> changes = new ArrayList<>();
    for (ChangeKind kind : ChangeKind.values()) {
      boolean work = kind.origin() == ChangeKind.Origin.WORK;
      if (work && kind.isOffered(new Planning(job).setting())) {
        switch (kind.reach()) {
          case WHOLE -> changes.add(Change.of(kind));
          case BANK ->
              kind.reach()
                  .where(job.state().layout())
                  .forEach(where -> changes.add(Change.at(kind, where)));
          default -> {
            List<String> where = kind.reach().where(job.state().layout());
            changes.add(Change.at(kind, where.get(0)));
          }
        }
      }
    }
    return changes;
  }

  /** What it would cost; its things can have a price from now on. */
  PlanCost effect(Change change) {
    asked = Optional.of(change);
    return book().effect(change);
  }
}
