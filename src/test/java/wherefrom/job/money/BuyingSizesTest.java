package wherefrom.job.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.SizesBench;
import wherefrom.job.entry.GoodsArrived;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.Goods;
import wherefrom.rules.size.ChangeText;
import wherefrom.rules.size.GoodsSize;

/** Lines of the buying list go by the size, whatever is said of it and in whichever unit. */
class BuyingSizesTest {
  private static final Article PISTONS = new Article.Known(Goods.PISTONS);

  private final SizesBench bench = SizesBench.typed();

  /** Those of a size that is known: of a bore that nobody speaks of, none is. */
  private List<BuyLine> pistons() {
    return new Buying(bench.bench.job.state())
        .find(PISTONS).stream().filter(line -> line.size().isStep()).toList();
  }

  private static GoodsSize over(String figure, Unit unit) {
    return GoodsSize.of(GoodsSize.Sense.OVER, Amount.of(figure, unit));
  }

  private void came(GoodsSize size, int pieces) {
    bench.bench.job.record(new GoodsArrived(PISTONS, size, pieces, "", true));
  }

  @Test
  void theSameLengthInTwoUnitsIsOneLine() {
    bench.made(ChangeKind.BORED, "B1", "0.020 in");
    bench.made(ChangeKind.BORED, "B2", "0.508 mm");
    bench.toReplace("piston@B1", "piston@B2");
    assertThat(pistons())
        .extracting(BuyLine::words)
        .containsExactly("2 pistons, 0.020 in over (twenty over)");
    came(over("0.508", Unit.MILLIMETRE), 1);
    came(over("0.020", Unit.INCH), 1);
    assertThat(pistons()).extracting(BuyLine::arrived).containsExactly(2);
  }

  @Test
  void aStepInMillimetresIsNotTheInchStepBesideIt() {
    bench.made(ChangeKind.BORED, "B1", "0.020 in");
    bench.made(ChangeKind.BORED, "B2", "0.50 mm");
    bench.toReplace("piston@B1", "piston@B2");
    assertThat(pistons())
        .extracting(BuyLine::size)
        .containsExactly(over("0.020", Unit.INCH), over("0.50", Unit.MILLIMETRE));
  }

  /** The line said "once bored" while the work was to come: the parts that came are the same. */
  @Test
  void whatCameBeforeTheCutCountsAfterIt() {
    Change cut = ChangeText.read(ChangeKind.BORED, "B3", "0.030", Unit.INCH);
    bench.planning.plan(cut);
    bench.toReplace("piston@B3");
    BuyLine before = pistons().get(0);
    assertThat(before.words()).isEqualTo("1 piston, 0.030 in over (thirty over), once bored");
    assertThat(Buying.arrive(bench.bench.job, before, 1, "thirty over", true)).isEmpty();
    assertThat(PartNumbers.keep(bench.bench.job, before, "P-30")).isEmpty();
    bench.planning.carryOut(1);
    assertThat(pistons())
        .singleElement()
        .satisfies(
            line -> {
              assertThat(line.sizeWords()).isEqualTo("0.030 in over (thirty over)");
              assertThat(line.arrived()).isEqualTo(1);
              assertThat(line.numbers()).containsExactly("P-30");
            });
  }

  /** One bore is cut, the other is going to be: one size, so one line and one order. */
  @Test
  void partsForACutThatIsMadeAndForOneToComeAreOneLine() {
    bench.made(ChangeKind.BORED, "B1", "0.030");
    bench.planning.plan(ChangeText.read(ChangeKind.BORED, "B3", "0.030", Unit.INCH));
    bench.toReplace("piston@B1", "piston@B3");
    assertThat(pistons())
        .extracting(BuyLine::words)
        .containsExactly("2 pistons, 0.030 in over (thirty over)");
  }
}
