package wherefrom.job.numbers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.BenchJob;
import wherefrom.job.PartRecord;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.job.measure.WeightSet;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.shop.MachineShop;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Dimension;

/** Pistons and rods from the scale to matched sets and the bob weight on the slip. */
class WeightsTest {
  private final BenchJob bench = BenchJob.v8();
  private final BobWeight bob = new BobWeight(bench.job);

  @BeforeEach
  void listScale() {
    new Instruments(bench.job).list("scale", Dimension.MASS, "0.1", "0.2", "0.1");
  }

  private void weigh(String place, String plan, String grams) {
    Subject part = Subject.ofPart(bench.item(place));
    assertThat(
            new Measuring(bench.job)
                .take(
                    new Measuring.Entry(
                        part, plan, "scale", Map.of("weight", List.of(grams)), true, "")))
        .isInstanceOf(Measuring.Answer.Kept.class);
  }

  private static void done(FigureOutcome came) {
    assertThat(came).isInstanceOf(FigureOutcome.Done.class);
  }

  private void weighAll() {
    weighSets();
    done(bob.set(BobWeight.Typed.SHELLS, "45"));
    done(bob.set(BobWeight.Typed.RINGS, "60 g"));
  }

  private void weighSets() {
    for (PartRecord each : bench.job.state().parts()) {
      String key = each.part().home().key();
      if (each.part().kind() == PartKind.ROD) {
        weigh(key, "rod-big-weight", "621.5");
        weigh(key, "rod-small-weight", "200.0");
      } else if (each.part().kind() == PartKind.PISTON) {
        weigh(key, "piston-weight", "500.0");
        weigh(key, "pin-weight", "139.5");
      }
    }
  }

  /** The one that was not weighed may be the lightest, to which the others come. */
  @Test
  void aSetThatIsNotWholeGivesNoBobWeightAndSaysWhatLacks() {
    weigh("piston@B1", "piston-weight", "500.0");
    assertThat(bob.answer().missing())
        .contains("piston weight of B2, B3, B4, B5, B6, B7, B8", "rod weight, big end");
    weighAll();
    assertThat(bob.answer().missing()).isEmpty();
  }

  /**
   * Printed: big end 621.5 g and shells 45 g, two rods a pin: 1333 g ("Calculating Bob Weight",
   * April 2008); piston with pin 639.5 g is printed there too. The rest is an own example: 2·(639.5
   * + 60 + 200) = 1799; 1333 + 0.5·1799 = 2232.5.
   */
  @Test
  void theBobWeightIsWhatRotatesAndHalfOfTheRest() {
    weighAll();
    BobWeight.Answer answer = bob.answer();
    assertThat(answer.rotating().orElseThrow().value()).isCloseTo(1333, within(1e-9));
    assertThat(answer.upAndDown().orElseThrow().value()).isCloseTo(1799, within(1e-9));
    assertThat(answer.bob().orElseThrow().value()).isCloseTo(2232.5, within(1e-9));
    done(bob.set(BobWeight.Typed.SHARE, "0.52"));
    done(bob.set(BobWeight.Typed.OIL, "5"));
    assertThat(bob.answer().bob().orElseThrow().value()).isCloseTo(2273.48, within(1e-9));
  }

  /** Four weighings: 2·big, and 1·each of the others (half of two). By hand. */
  @Test
  void theUncertaintyIsThatOfFourWeighings() {
    weighAll();
    double one = Math.sqrt((0.05 * 0.05 + 0.2 * 0.2 + 0.1 * 0.1) / 3);
    assertThat(bob.answer().bob().orElseThrow().standardUncertainty())
        .isCloseTo(one * Math.sqrt(4 + 1 + 1 + 1), within(1e-9));
  }

  @Test
  void theOthersAreBroughtToTheLightest() {
    weigh("piston@B1", "piston-weight", "501.0");
    weigh("piston@B2", "piston-weight", "504.2");
    weigh("piston@B3", "piston-weight", "501.2");
    WeightSet set =
        WeightSet.of(bench.job.state(), ReadingPlans.find("piston-weight").orElseThrow());
    assertThat(set.members())
        .extracting(WeightSet.Member::words)
        .containsExactly("matched", "take off 3.2 g", "matched");
    assertThat(set.members().get(1).takeOff().standardUncertainty())
        .isCloseTo(Math.sqrt(2 * (0.05 * 0.05 + 0.2 * 0.2 + 0.1 * 0.1) / 3), within(1e-9));
    bench.replace("piston@B1");
    assertThat(
            WeightSet.of(bench.job.state(), ReadingPlans.find("piston-weight").orElseThrow())
                .members())
        .hasSize(2);
  }

  @Test
  void whatIsNotWeighedIsNamed() {
    weigh("piston@B1", "piston-weight", "500.0");
    assertThat(bob.answer().missing())
        .containsExactly(
            "rod weight, big end",
            "rod weight, small end",
            "piston weight of B2, B3, B4, B5, B6, B7, B8",
            "pin weight",
            "shells of one rod",
            "rings of one piston");
    assertThat(bob.slip()).isEmpty();
  }

  @Test
  void figuresThatCannotBeAreRefused() {
    assertThat(bob.set(BobWeight.Typed.SHARE, "50")).isInstanceOf(FigureOutcome.Refused.class);
    assertThat(bob.set(BobWeight.Typed.RODS, "3")).isInstanceOf(FigureOutcome.Refused.class);
    assertThat(bob.set(BobWeight.Typed.OIL, "-1")).isInstanceOf(FigureOutcome.Refused.class);
    assertThat(bob.set(BobWeight.Typed.OIL, "5 mm")).isInstanceOf(FigureOutcome.Refused.class);
  }

  @Test
  void theSlipAndTheRecordHaveIt() {
    weighAll();
    String words = bob.slip().orElseThrow();
    assertThat(words).isEqualTo("balance to a bob weight of 2232.5 g, share 0.5");
    MachineShop shop = new MachineShop(bench.job);
    shop.add(shop.nextVisit(), "crankshaft", 1, words, "", "", false);
    assertThat(shop.visits().get(0).lines().get(0).line().wanted()).isEqualTo(words);
    assertThat(BuildRecord.of(bench.job).find(RecordTable.WEIGHTS).rows())
        .anySatisfy(row -> assertThat(row.cells()).contains(words));
  }

  @Test
  void onlyTheCrankOfAVHasOneAndOnlyAnEightTheUsualShare() {
    BobWeight inline = new BobWeight(BenchJob.inline4().job);
    assertThat(inline.answer().bob()).isEmpty();
    assertThat(inline.sentence()).contains("Only V engines need one");
    BobWeight six = new BobWeight(BenchJob.v6().job);
    assertThat(six.answer().missing()).contains("share of what goes up and down");
    assertThat(new BobWeight(bench.job).answer().missing())
        .doesNotContain("share of what goes up and down");
  }
}
