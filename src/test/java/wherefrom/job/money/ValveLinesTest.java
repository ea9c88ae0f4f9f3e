package wherefrom.job.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wherefrom.engine.ReadyLayouts;
import wherefrom.inspection.Decision;
import wherefrom.job.BenchJob;
import wherefrom.job.OpenJob;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.GoodsArrived;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.Goods;
import wherefrom.rules.size.GoodsSize;

/** Intake and exhaust valves are of two sizes, so that each is a line of its own. */
class ValveLinesTest {
  private static final Article VALVES = new Article.Known(Goods.VALVES);

  private static OpenJob tracking(Set<PartKind> kinds) {
    return BenchJob.whole(ReadyLayouts.find("v8-odd-even").orElseThrow(), kinds);
  }

  private static OpenJob withValvesToReplace() {
    OpenJob job = tracking(PartKind.all());
    job.state().parts().stream()
        .map(record -> record.part())
        .filter(part -> part.kind() == PartKind.VALVE)
        .toList()
        .forEach(part -> job.record(new DecisionMade(part.item(), Decision.REPLACE, "burnt")));
    return job;
  }

  private static List<BuyLine> valves(OpenJob job) {
    return new Buying(job.state())
        .lines().stream().filter(line -> line.what().equals(VALVES)).toList();
  }

  private static void came(OpenJob job, String size, int pieces) {
    job.record(
        new GoodsArrived(VALVES, GoodsSize.read(size, Unit.INCH).orElseThrow(), pieces, "", true));
  }

  @Test
  void eachSideIsALineThatItsOwnValvesFill() {
    OpenJob job = withValvesToReplace();
    assertThat(new ReplacementList(job.state()).lines())
        .extracting(Replacement::named)
        .containsExactly("intake valves", "exhaust valves");
    assertThat(valves(job))
        .extracting(BuyLine::words)
        .containsExactly("8 valves, intake", "8 valves, exhaust");
    came(job, "exhaust", 8);
    assertThat(valves(job)).extracting(BuyLine::open).containsExactly(8, 0);
  }

  @Test
  void valvesThatCameBeforeTheirSideWasAskedForStillCount() {
    OpenJob job = withValvesToReplace();
    came(job, "intake", 2);
    came(job, "", 9);
    assertThat(valves(job)).extracting(BuyLine::open).containsExactly(0, 5);
    came(job, "", 7);
    assertThat(valves(job)).extracting(BuyLine::arrived).containsExactly(8, 10);
  }

  @Test
  void valvesWithoutTagsAreTwoLinesToo() {
    OpenJob job = tracking(PartKind.alwaysOn());
    Planning planning = new Planning(job);
    planning.plan(Change.at(ChangeKind.LARGER_VALVES, "left"));
    planning.carryOut(1);
    assertThat(valves(job))
        .extracting(BuyLine::words)
        .containsExactlyInAnyOrder("4 valves, intake", "4 valves, exhaust");
    assertThat(new PurchaseList(job.state()).lines())
        .extracting(Purchase::words)
        .contains("valves, intake", "valves, exhaust");
  }
}
