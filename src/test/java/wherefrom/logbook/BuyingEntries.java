package wherefrom.logbook;

import java.util.List;
import wherefrom.job.entry.GoodsMeasured;
import wherefrom.job.entry.GoodsWay;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.PartNumberTyped;
import wherefrom.job.entry.SetHolds;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.size.GoodsSize;

/** An entry of every kind about what was bought and came. */
final class BuyingEntries {
  private static final GoodsSize TEN =
      GoodsSize.of(GoodsSize.Sense.UNDER, Amount.of("0.010", Unit.INCH));

  private BuyingEntries() {}

  static List<JobEntry> all() {
    Article shells = Article.read("rod shells");
    return List.of(
        new GoodsMeasured(
            shells,
            TEN,
            GoodsWay.WALL,
            Amount.of("0.0775", Unit.INCH),
            Amount.of("0.0001", Unit.INCH),
            Amount.of("0.0725", Unit.INCH),
            Amount.of("0.010", Unit.INCH),
            Amount.of("0.001", Unit.INCH)),
        new PartNumberTyped(shells, TEN, "RS 4421-10"),
        new SetHolds(Article.read("head gaskets"), 2));
  }
}
