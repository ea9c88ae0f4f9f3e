package wherefrom.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Arrangement;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;

/** Where things lie, in pitches, worked out by hand from the rules of the drawing. */
class EngineGeometryTest {
  private static final Glass GLASS = Glass.screen(Glass.UNITS_PER_MM, 1);
  private static final Offset<Double> NEAR = within(1e-9);

  private static EngineGeometry geometry(Layout layout, View view) {
    return EngineGeometry.of(layout, view, new Bounds(0, 0, 4000, 4000), GLASS, BelowPanRail.NONE);
  }

  private static EngineGeometry below(String name) {
    return geometry(SampleLayouts.ready(name), View.BELOW);
  }

  private static double outward(EngineGeometry at, Point point) {
    return (point.y() - at.axis()) / at.pitch();
  }

  @Test
  void theWidthInPitchesIsThatOfItsPieces() {
    assertThat(geometry(SampleLayouts.ready("v8-odd-even"), View.ABOVE).pitch())
        .isCloseTo(4000 / (0.15 + 0.20 + 1.20 + 3 + 0.20 + 0.08 + 0.13), NEAR);
    assertThat(geometry(SampleLayouts.ready("inline-6"), View.ABOVE).pitch())
        .isCloseTo(4000 / (0.15 + 0.20 + 1.40 + 5 + 0.08 + 0.13), NEAR);
  }

  @Test
  void theHeightMayBeWhatBindsAndLeavesRoomForTheNames() {
    Layout v8 = SampleLayouts.ready("v8-odd-even");
    Bounds low = new Bounds(0, 0, 4000, 642);
    EngineGeometry at = EngineGeometry.of(v8, View.BELOW, low, GLASS, BelowPanRail.NAMES);
    assertThat(at.pitch()).isCloseTo(600 / 2.04, NEAR);
    assertThat(at.bounds().height()).isCloseTo(642, NEAR);
    assertThat(at.bounds().middleX()).isCloseTo(2000, NEAR);
  }

  @Test
  void aQuarterPitchBeforeAndBehindTheBoreStandItsValvesAsTheOrderSays() {
    EngineGeometry at = geometry(SampleLayouts.ready("v8-odd-even"), View.ABOVE);
    double pitch = at.pitch();
    double exhaust = at.valveX(new ValveSpot(1, ValveSide.EXHAUST));
    double intake = at.valveX(new ValveSpot(1, ValveSide.INTAKE));
    assertThat(at.boreX(1) - exhaust).isCloseTo(0.25 * pitch, NEAR);
    assertThat(intake - at.boreX(1)).isCloseTo(0.25 * pitch, NEAR);
    assertThat(at.boreX(2) - at.boreX(1)).isCloseTo(0.20 * pitch, NEAR);
  }

  /** Left and right are those of a person at the flywheel. */
  @Test
  void theLeftBankLiesBelowFromAboveAndAboveFromBelow() {
    Layout v8 = SampleLayouts.ready("v8-odd-even");
    assertThat(geometry(v8, View.ABOVE).sign(1)).isEqualTo(1);
    assertThat(geometry(v8, View.BELOW).sign(1)).isEqualTo(-1);
    assertThat(geometry(SampleLayouts.ready("inline-4"), View.ABOVE).sign(1)).isEqualTo(-1);
  }

  /** With both angles at 45 degrees a pin's throw is .20 sin 45 = .1414 pitches. */
  @Test
  void aV8sPairsShareAPin() {
    EngineGeometry at = below("v8-odd-even");
    for (List<Integer> pair : List.of(List.of(1, 2), List.of(3, 4), List.of(5, 6), List.of(7, 8))) {
      assertThat(at.pin(pair.get(0)).x()).isCloseTo(at.pin(pair.get(1)).x(), NEAR);
      assertThat(at.pin(pair.get(0)).y()).isCloseTo(at.pin(pair.get(1)).y(), NEAR);
    }
    assertThat(outward(at, at.pin(1))).isCloseTo(-0.20 * Math.sqrt(0.5), NEAR);
  }

  @Test
  void anEvenFiringV6HasSplitPinsAndAnInline6MirroredThrows() {
    EngineGeometry v6 = below("v6-odd-even");
    assertThat(v6.pin(1).y()).isNotCloseTo(v6.pin(2).y(), within(0.05 * v6.pitch()));
    EngineGeometry six = below("inline-6");
    for (int cylinder = 1; cylinder <= 3; cylinder++) {
      assertThat(six.pin(cylinder).y()).isCloseTo(six.pin(7 - cylinder).y(), NEAR);
    }
    assertThat(outward(six, six.pin(1))).isCloseTo(-0.20, NEAR);
  }

  @Test
  void theAngleBetweenTheBanksMovesOnlyThePins() {
    Layout v8 = SampleLayouts.ready("v8-odd-even");
    Layout narrow =
        new Layout(
            "narrow",
            "Narrow",
            Arrangement.V,
            60,
            v8.banks(),
            v8.leadingBank(),
            v8.firingOrder(),
            5,
            5,
            true,
            4,
            5,
            v8.lifters(),
            v8.rockers());
    EngineGeometry wide = geometry(v8, View.BELOW);
    EngineGeometry at = geometry(narrow, View.BELOW);
    assertThat(at.pin(1).y()).isNotCloseTo(wide.pin(1).y(), within(0.01 * at.pitch()));
    for (int cylinder : at.cylinders()) {
      assertThat(at.rodView(cylinder)).isEqualTo(wide.rodView(cylinder));
    }
    assertThat(at.mains().x(2)).isEqualTo(wide.mains().x(2));
  }

  @Test
  void mainsStandBetweenTheBoresWhereverThereIsABayForEach() {
    for (Layout layout : ReadyLayouts.all()) {
      bays(geometry(layout, View.BELOW));
    }
    for (long seed = 0; seed < 300; seed++) {
      EngineGeometry at = geometry(SampleLayouts.drawn(seed), View.BELOW);
      if (at.mains().count() <= at.bores() + 1) {
        bays(at);
      }
      assertThat(at.mains().drawnPitch() * 0.44).isLessThanOrEqualTo(at.mains().spacing() + 1e-6);
    }
  }

  private static void bays(EngineGeometry at) {
    double first = at.mains().count() == 1 ? Double.NaN : at.mains().x(1);
    for (int main = 2; main <= at.mains().count(); main++) {
      double bays = (at.mains().x(main) - first) / at.pitch();
      assertThat(bays).isCloseTo(Math.rint(bays), within(1e-6)).isGreaterThan(0.999);
      assertThat(at.mains().x(main)).isGreaterThan(at.mains().x(main - 1));
    }
  }
}
