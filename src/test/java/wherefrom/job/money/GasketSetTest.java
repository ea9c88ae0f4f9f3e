package wherefrom.job.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.engine.ReadyLayouts;
import wherefrom.inspection.Decision;
import wherefrom.job.BenchJob;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.GoodsArrived;
import wherefrom.parts.PartKind;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Goods;
import wherefrom.rules.size.GoodsSize;

/** What a gasket set that holds things of the list does to the list. */
class GasketSetTest {
  private static final Article KEEPERS = new Article.Known(Goods.KEEPER_PAIRS);

  private final OpenJob job =
      BenchJob.whole(ReadyLayouts.find("v8-odd-even").orElseThrow(), PartKind.all());

  private void replaceKeepers() {
    job.state().parts().stream()
        .map(record -> record.part())
        .filter(part -> part.kind() == PartKind.KEEPERS)
        .toList()
        .forEach(part -> job.record(new DecisionMade(part.item(), Decision.REPLACE, "worn")));
  }

  private BuyLine keepers() {
    return new Buying(job.state())
        .lines().stream().filter(line -> line.what().equals(KEEPERS)).findFirst().orElseThrow();
  }

  @Test
  void aSetIsOnTheListOnlyWhereTheListWantsWhatItHolds() {
    GasketSet.tick(job, KEEPERS, 16);
    assertThat(new Buying(job.state()).lines()).isEmpty();
    replaceKeepers();
    assertThat(new Buying(job.state()).lines()).anyMatch(BuyLine::isGasketSet);
  }

  @Test
  void aLineIsAskedForAsItIsSold() {
    GasketSet.tick(job, KEEPERS, 16);
    replaceKeepers();
    BuyLine set =
        new Buying(job.state()).lines().stream().filter(BuyLine::isGasketSet).findFirst().get();
    assertThat(set.words()).isEqualTo("1 gasket set");
    assertThat(set.packageWords()).isEqualTo("sold as one set for the engine");
    assertThat(keepers().packageWords()).isEqualTo("sold as a set of 16, or one by one");
    assertThat(keepers().orderWords()).startsWith("buy 2 sets of 16, 2 to spare");
    BuyLine few = line(Goods.PUSHRODS, 1, new SoldAs(16, 0));
    assertThat(few.words()).isEqualTo("1 pushrod");
    assertThat(few.orderWords()).isEqualTo("buy 1, or a set of 16");
    BuyLine seals = line(Goods.SEALS, 1, new SoldAs(1, 0));
    assertThat(seals.words()).isEqualTo("seals");
    assertThat(seals.orderWords()).isEqualTo("buy as many as the engine has");
    assertThat(seals.arrivedWords()).isEqualTo("none here");
    assertThat(seals.taking(4, true).arrivedWords()).isEqualTo("here");
  }

  private static BuyLine line(Goods goods, int pieces, SoldAs sold) {
    return new BuyLine(
        new Article.Known(goods),
        GoodsSize.none(),
        "",
        pieces,
        sold,
        false,
        0,
        0,
        List.of(),
        "worn");
  }

  @Test
  void sparesThatLieInTheSetAreNotAskedForAgain() {
    replaceKeepers();
    int wanted = keepers().open();
    assertThat(wanted).isEqualTo(keepers().pieces() + 2);
    GasketSet.tick(job, KEEPERS, wanted + 1);
    job.record(new GoodsArrived(GasketSet.WHAT, GoodsSize.none(), 1, "", true));
    assertThat(keepers().open()).isZero();
    GasketSet.tick(job, KEEPERS, wanted - 1);
    assertThat(keepers().open()).isEqualTo(1);
  }
}
