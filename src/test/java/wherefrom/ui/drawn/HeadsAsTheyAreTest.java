package wherefrom.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wherefrom.drawing.Asked;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.CarrierFigure;
import wherefrom.drawing.CarriersAsTheyAre;
import wherefrom.drawing.CylinderZoom;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.EngineAbove;
import wherefrom.drawing.EngineGeometry;
import wherefrom.drawing.EngineStates;
import wherefrom.drawing.Glass;
import wherefrom.drawing.MarkPlan;
import wherefrom.drawing.PartState;
import wherefrom.drawing.Role;
import wherefrom.drawing.Sign;
import wherefrom.drawing.View;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigParts;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartOut;
import wherefrom.job.pages.RecordEngine;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.ui.sample.SampleJob;

/** A head that is off is one contour with its mark, and what went with it is not drawn as in. */
class HeadsAsTheyAreTest {
  private static final Glass GLASS = Glass.screen(5.9, 1);
  private static final Bounds ROOM = new Bounds(0, 0, 1068, 500);

  private final SampleJob sample =
      SampleJob.whole("v8-odd-even", EnumSet.of(PartKind.PUSHROD, PartKind.ROCKER, PartKind.VALVE));

  private Asked asked() {
    return Asked.of(sample.job.state().kinds());
  }

  private Drawing above() {
    EngineGeometry at =
        EngineGeometry.of(sample.job.state().layout(), View.ABOVE, ROOM, GLASS, BelowPanRail.NONE);
    return EngineAbove.of(at, asked());
  }

  private int leftHead() {
    return BagBook.of(sample.job.state()).bigParts().stream()
        .filter(part -> part.words().equals("left head"))
        .findFirst()
        .orElseThrow()
        .number();
  }

  private void leftHead(Whereabouts where) {
    BigParts parts = new BigParts(sample.job);
    parts.nameUsual();
    parts.off(leftHead(), "for the test");
    if (where != Whereabouts.OUT) {
      parts.move(leftHead(), where, "");
    }
  }

  private EngineStates states() {
    return PartStates.of(sample.job.state());
  }

  private DrawnAs look(String key) {
    return asked().look(place(key), states());
  }

  private static Place place(String key) {
    return Place.find(key).orElseThrow();
  }

  @Test
  void aHeadThatIsOnIsDrawnAsItWas() {
    new BigParts(sample.job).nameUsual();
    Drawing drawn = above();
    Map<CarrierFigure, PartState> off = CarriersAsTheyAre.off(drawn, states());
    assertThat(off).isEmpty();
    assertThat(CarriersAsTheyAre.of(drawn, off).ground()).isEqualTo(drawn.ground());
    assertThat(look("spring@3EX")).isEqualTo(DrawnAs.FAINT);
    assertThat(look("rocker@3EX")).isEqualTo(DrawnAs.IN);
  }

  @Test
  void aHeadAtTheShopIsOneContourWithItsMark() {
    leftHead(Whereabouts.AT_SHOP);
    Drawing drawn = above();
    Map<CarrierFigure, PartState> off = CarriersAsTheyAre.off(drawn, states());
    assertThat(off.values()).containsExactly(PartState.AT_SHOP);
    CarrierFigure head = off.keySet().iterator().next();
    assertThat(head.kind()).isEqualTo(BigPartKind.HEAD);
    CarriersAsTheyAre castings = CarriersAsTheyAre.of(drawn, off);
    assertThat(castings.ground()).doesNotContainAnyElementsOf(head.solid());
    assertThat(castings.ground())
        .as("head bolts of the right head, damper, flywheel")
        .filteredOn(shape -> shape.role() == Role.NUT)
        .hasSize(10);
    assertThat(castings.outlines()).extracting(shape -> shape.role()).containsExactly(Role.BODY);
    assertThat(castings.marks()).isNotEmpty();
  }

  @Test
  void whatWentWithItIsNotDrawnAsIn() {
    leftHead(Whereabouts.OUT);
    assertThat(look("spring@3EX")).as("nobody tracks it").isEqualTo(DrawnAs.ABSENT);
    assertThat(look("spring@4EX")).as("the other head").isEqualTo(DrawnAs.FAINT);
    for (String kind : List.of("rocker", "pushrod", "valve")) {
      assertThat(look(kind + "@3EX")).as(kind).isEqualTo(DrawnAs.OUT);
      assertThat(look(kind + "@4EX")).as(kind).isEqualTo(DrawnAs.IN);
    }
    assertThat(states().apply(place("valve@3EX")).words()).contains("its head out");
    assertThat(look("lifter@3EX")).as("lies in the block").isEqualTo(DrawnAs.FAINT);
  }

  /** A valve that never came out of a head is where the head is; on the engine the head says so. */
  @Test
  void whatWentWithItIsWhereTheHeadIs() {
    leftHead(Whereabouts.AT_SHOP);
    assertThat(states().apply(place("valve@3EX")).sign()).isEqualTo(Sign.AT_SHOP);
    assertThat(states().apply(place("valve@4EX")).sign()).isEqualTo(Sign.IN);
    assertThat(above().anchors())
        .flatExtracting(at -> MarkPlan.of(at, asked(), states(), Set.of(), GLASS))
        .isEmpty();
    Drawing large = CylinderZoom.of(sample.job.state().layout(), 3, ROOM, asked(), GLASS);
    assertThat(large.anchors())
        .flatExtracting(at -> MarkPlan.of(at, asked(), states(), Set.of(), GLASS))
        .filteredOn(mark -> mark.sign() == Sign.AT_SHOP)
        .hasSize(2);
  }

  @Test
  void whatIsFittedToAHeadOnTheBenchIsShownSoAsLongAsTheHeadIsThere() {
    leftHead(Whereabouts.OUT);
    int valve = sample.part("valve@3EX").item();
    sample.job.record(new PartOut(valve));
    sample.job.record(new PartFitted(valve, place("valve@3EX")));
    assertThat(look("valve@3EX")).isEqualTo(DrawnAs.FITTED);
    new BigParts(sample.job).move(leftHead(), Whereabouts.WASHING, "");
    assertThat(look("valve@3EX")).isEqualTo(DrawnAs.OUT);
  }

  @Test
  void aCylinderLargeLeavesItsHeadOut() {
    leftHead(Whereabouts.WASHING);
    for (int cylinder : new int[] {3, 4}) {
      Drawing drawn = CylinderZoom.of(sample.job.state().layout(), cylinder, ROOM, asked(), GLASS);
      Map<CarrierFigure, PartState> off = CarriersAsTheyAre.off(drawn, states());
      boolean left = cylinder == 3;
      assertThat(off.isEmpty()).isEqualTo(!left);
      assertThat(CarriersAsTheyAre.of(drawn, off).outlines()).hasSize(left ? 2 : 0);
    }
  }

  @Test
  void theRecordKnowsTheHeadsToo() {
    leftHead(Whereabouts.AT_SHOP);
    RecordEngine paper = RecordEngine.of(sample.job.state());
    assertThat(paper.findCarrier(BigPartKind.HEAD, place("rocker@3EX").spot()))
        .hasValueSatisfying(head -> assertThat(head.where()).isEqualTo(Whereabouts.AT_SHOP));
    assertThat(paper.findCarrier(BigPartKind.HEAD, place("rocker@4EX").spot()))
        .hasValueSatisfying(head -> assertThat(head.isOn()).isTrue());
    assertThat(paper.showing(Set.of(), wherefrom.job.PlaceState.OUT).carriers()).isEmpty();
  }
}
