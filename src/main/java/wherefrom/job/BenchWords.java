package wherefrom.job;

import wherefrom.inspection.Check;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.entry.BudgetSet;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.ChangePlanned;
import wherefrom.job.entry.CostDropped;
import wherefrom.job.entry.CostNoted;
import wherefrom.job.entry.DebrisFound;
import wherefrom.job.entry.FeatureDecided;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.FiguresKept;
import wherefrom.job.entry.GoodsArrived;
import wherefrom.job.entry.GoodsMeasured;
import wherefrom.job.entry.LimitTyped;
import wherefrom.job.entry.OfferTyped;
import wherefrom.job.entry.PartNumberTyped;
import wherefrom.job.entry.PlanDropped;
import wherefrom.job.entry.PriceNoted;
import wherefrom.job.entry.ReadingsTaken;
import wherefrom.job.entry.Reidentified;
import wherefrom.job.entry.SetHolds;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.job.entry.ShopLineBack;
import wherefrom.job.entry.SizeTyped;
import wherefrom.job.entry.SlotUnknown;
import wherefrom.job.entry.SubjectPhotographed;
import wherefrom.job.entry.ToolListed;
import wherefrom.job.entry.ZeroChecked;
import wherefrom.quantity.Money;
import wherefrom.rules.debris.DebrisFind;
import wherefrom.rules.size.GoodsSize;

/** What happened between the two days, in words: looks, plans, changes, readings, money. */
final class BenchWords {
  private static final EntryRows<EntryWords, String> LOOKS =
      EntryRows.<EntryWords, String>none()
          .on(SubjectPhotographed.class, (words, it) -> "photograph of " + at(words, it.subject()))
          .on(FeatureLooked.class, BenchWords::looked)
          .on(FeatureDecided.class, BenchWords::decided)
          .on(ChangePlanned.class, (words, plan) -> planned(plan))
          .on(PlanDropped.class, (words, dropped) -> dropped(dropped))
          .on(ChangeMade.class, (words, made) -> made(made))
          .on(SlotUnknown.class, (words, it) -> words.part(it.item()) + ": slot unknown")
          .on(DebrisFound.class, (words, found) -> debris(found))
          .on(Reidentified.class, BenchWords::told);

  private static final EntryRows<EntryWords, String> READINGS =
      EntryRows.<EntryWords, String>none()
          .on(ReadingsTaken.class, BenchWords::measured)
          .on(ToolListed.class, (words, tool) -> "tool listed: " + tool.name())
          .on(ZeroChecked.class, (words, zero) -> zero(zero))
          .on(LimitTyped.class, (words, limit) -> limit(limit))
          .on(SizeTyped.class, (words, size) -> size(size))
          .on(FiguresKept.class, (words, kept) -> figures(kept));

  private static final EntryRows<EntryWords, String> SHOP_AND_MONEY =
      EntryRows.<EntryWords, String>none()
          .on(ShopLineAdded.class, (words, line) -> added(line))
          .on(ShopLineBack.class, (words, back) -> back(back))
          .on(CostNoted.class, (words, cost) -> cost(cost))
          .on(CostDropped.class, (words, it) -> dropped(it))
          .on(BudgetSet.class, (words, budget) -> budget(budget))
          .on(PriceNoted.class, (words, price) -> price(price))
          .on(OfferTyped.class, (words, offer) -> offer(offer))
          .on(GoodsArrived.class, (words, goods) -> arrived(goods))
          .on(GoodsMeasured.class, (words, it) -> gauged(it))
          .on(PartNumberTyped.class, (words, it) -> numbered(it))
          .on(SetHolds.class, (words, it) -> inSet(it));

  /** The kinds of entries that are said here. */
  static final EntryRows<EntryWords, String> ROWS = LOOKS.and(READINGS).and(SHOP_AND_MONEY);

  private BenchWords() {}

  /** A test by its title, or by its name where it is none of ours, and its answer. */
  static String look(String check, Look look) {
    return Check.answered(Checks.find(check).map(Check::title).orElse(check), look);
  }

  private static String looked(EntryWords words, FeatureLooked look) {
    return at(words, look.subject()) + ", " + look(look.check(), look.look());
  }

  private static String decided(EntryWords words, FeatureDecided it) {
    return at(words, it.subject()) + ": " + it.decision().word();
  }

  private static String planned(ChangePlanned plan) {
    return "plan " + plan.plan() + ": " + plan.change().words();
  }

  private static String dropped(PlanDropped plan) {
    return "plan " + plan.plan() + " dropped" + EntryWords.behind(plan.reason());
  }

  private static String dropped(CostDropped cost) {
    return "cost line " + cost.line() + " struck out" + EntryWords.behind(cost.reason());
  }

  private static String made(ChangeMade made) {
    return "done or found: " + made.change().words();
  }

  private static String debris(DebrisFound found) {
    String find = new DebrisFind(found.place(), found.look()).words();
    return "debris: " + find + EntryWords.behind(found.note());
  }

  private static String told(EntryWords words, Reidentified told) {
    return words.part(told.item()) + " told by its readings, " + told.confidence();
  }

  private static String measured(EntryWords words, ReadingsTaken taken) {
    String plan = ReadingPlans.find(taken.plan()).map(ReadingPlan::title).orElse(taken.plan());
    return at(words, taken.subject()) + ": " + plan + " measured";
  }

  private static String zero(ZeroChecked zero) {
    return zero.tool() + " at zero: " + zero.shown().text();
  }

  private static String limit(LimitTyped limit) {
    return "limit typed for " + limit.plan() + ", " + limit.result() + ": " + limit.source();
  }

  private static String size(SizeTyped size) {
    return "standard size of " + size.plan() + ": " + size.size().text() + ", " + size.source();
  }

  private static String figures(FiguresKept kept) {
    return kept.name().isEmpty()
        ? "figures deleted: " + kept.sheet()
        : "figures of " + kept.name() + " kept";
  }

  private static String added(ShopLineAdded line) {
    return "visit " + line.visit() + ": " + line.count() + " " + line.what();
  }

  private static String back(ShopLineBack back) {
    return "visit " + back.visit() + ", line " + back.line() + ": " + back.count() + " back";
  }

  private static String cost(CostNoted cost) {
    return cost.what().words()
        + ", "
        + cost.state().words()
        + ": "
        + Money.ofCents(cost.cents()).text();
  }

  private static String budget(BudgetSet budget) {
    return "budget " + Money.ofCents(budget.cents()).text() + " " + budget.currency();
  }

  private static String price(PriceNoted price) {
    return "price of " + price.what().words() + ": " + Money.ofCents(price.cents()).text();
  }

  private static String offer(OfferTyped offer) {
    String price = Money.ofCents(offer.cents()).text();
    return offer.supplier()
        + " asks "
        + price
        + " for "
        + offer.holds()
        + " "
        + offer.what().words();
  }

  private static String said(GoodsSize size) {
    return size.isNone() ? "" : ", " + size.words();
  }

  private static String arrived(GoodsArrived goods) {
    String size = said(goods.size());
    String right = goods.right() ? "" : ": wrong";
    return goods.pieces() + " " + goods.what().words() + size + " arrived" + right;
  }

  private static String gauged(GoodsMeasured one) {
    return "one of " + one.what().words() + ": " + one.way().words() + " " + one.reading().text();
  }

  private static String numbered(PartNumberTyped typed) {
    String size = said(typed.size());
    return "part number of " + typed.what().words() + size + ": " + typed.number();
  }

  private static String inSet(SetHolds holds) {
    return holds.pieces() == 0
        ? "gasket set lacks " + holds.what().words()
        : "gasket set holds " + holds.pieces() + " × " + holds.what().words();
  }

  /** What was looked at or measured, by its key. */
  private static String at(EntryWords words, String key) {
    return Subject.find(key)
        .map(
            subject ->
                subject.match(
                    part -> words.part(part.item()),
                    Subject.AFeature::words,
                    beside -> BagWords.of(words, beside)))
        .orElse(key);
  }
}
