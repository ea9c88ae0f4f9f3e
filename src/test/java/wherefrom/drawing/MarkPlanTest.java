package wherefrom.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Layout;
import wherefrom.engine.ValveSpot;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

class MarkPlanTest {
  private static final Glass GLASS = Glass.screen(Glass.UNITS_PER_MM, 1);
  private static final Layout V8 = SampleLayouts.ready("v8-odd-even");
  private static final Bounds ROOM = new Bounds(0, 0, 1232, 640);
  private static final Set<PartKind> TOP =
      EnumSet.of(PartKind.ROCKER, PartKind.PUSHROD, PartKind.LIFTER, PartKind.SPRING);
  private static final EngineGeometry ABOVE =
      EngineGeometry.of(V8, View.ABOVE, ROOM, GLASS, BelowPanRail.NONE);

  private static Place place(String key) {
    return Place.find(key).orElseThrow();
  }

  /** The marks at 3 EX; what is not named is in the engine. */
  private static List<PlacedMark> marks(Asked asked, Map<String, PartState> states) {
    return EngineAbove.of(ABOVE, asked).anchors().stream()
        .filter(anchor -> anchor.held().get(0).place().spot().key().equals("3EX"))
        .flatMap(
            anchor ->
                MarkPlan.of(
                    anchor,
                    asked,
                    at -> states.getOrDefault(at.key(), PartState.IN),
                    Set.of(),
                    GLASS)
                    .stream())
        .toList();
  }

  private static double outward(PlacedMark mark) {
    return (mark.at().y() - ABOVE.axis()) / ABOVE.pitch();
  }

  @Test
  void rockerAndPushrodOutHaveOneTagAtTheCup() {
    List<PlacedMark> marks =
        marks(Asked.of(TOP), Map.of("rocker@3EX", PartState.OUT, "pushrod@3EX", PartState.OUT));
    assertThat(marks).hasSize(1);
    assertThat(marks.get(0).sign()).isEqualTo(Sign.OUT);
    assertThat(outward(marks.get(0))).isCloseTo(0.47, within(1e-9));
  }

  @Test
  void onePartOutHasItsTagOnIt() {
    List<PlacedMark> marks = marks(Asked.of(TOP), Map.of("spring@3EX", PartState.OUT));
    assertThat(marks).extracting(PlacedMark::sign).containsExactly(Sign.OUT);
    assertThat(outward(marks.get(0))).isCloseTo(0.84, within(1e-9));
  }

  /** The rocker's own tag would lie on the pivot that comes out next. */
  @Test
  void theTagOfWhatIsOutDoesNotCoverThePartThatIsMeant() {
    Place pivot = place("pivot@3EX");
    Set<PartKind> kinds = EnumSet.of(PartKind.PIVOT, PartKind.ROCKER, PartKind.PUSHROD);
    Asked asked = new Asked(kinds, Optional.empty(), Set.of(pivot));
    Map<String, PartState> states = Map.of("rocker@3EX", PartState.OUT);
    List<PlacedMark> marks =
        EngineAbove.of(ABOVE, asked).anchors().stream()
            .filter(anchor -> anchor.held().get(0).place().spot().key().equals("3EX"))
            .flatMap(
                anchor ->
                    MarkPlan.of(
                        anchor,
                        asked,
                        at -> states.getOrDefault(at.key(), PartState.IN),
                        Set.of(pivot),
                        GLASS)
                        .stream())
            .toList();
    assertThat(marks).extracting(PlacedMark::sign).containsExactly(Sign.OUT);
    assertThat(outward(marks.get(0))).as("at the cup").isCloseTo(0.47, within(1e-9));
  }

  @Test
  void whatIsInOrFittedHasNoMarkOnTheEngine() {
    assertThat(marks(Asked.of(TOP), Map.of("rocker@3EX", PartState.FITTED))).isEmpty();
  }

  @Test
  void ofTwoMarksThatWouldTouchTheGraverStands() {
    List<PlacedMark> marks =
        marks(
            Asked.of(TOP),
            Map.of("pushrod@3EX", PartState.WASHING, "lifter@3EX", PartState.MISSING));
    assertThat(marks).extracting(PlacedMark::sign).containsExactly(Sign.MISSING);
  }

  @Test
  void onlyTheChosenKindBearsMarks() {
    Map<String, PartState> states =
        Map.of("rocker@3EX", PartState.OUT, "pushrod@3EX", PartState.WASHING);
    assertThat(marks(Asked.of(TOP, PartKind.PUSHROD), states))
        .extracting(PlacedMark::sign)
        .containsExactly(Sign.WASHING);
    assertThat(marks(Asked.of(EnumSet.of(PartKind.SPRING)), states)).isEmpty();
  }

  @Test
  void whatIsPointedAtBearsNoMark() {
    Asked asked = Asked.of(TOP);
    Anchor anchor = EngineAbove.of(ABOVE, asked).anchors().get(0);
    Anchor.Held first = anchor.held().get(0);
    Set<Place> here = Set.of(first.place());
    assertThat(MarkPlan.of(anchor, asked, at -> PartState.WASHING, Set.of(), GLASS))
        .extracting(PlacedMark::at)
        .contains(first.mark());
    assertThat(MarkPlan.of(anchor, asked, at -> PartState.WASHING, here, GLASS))
        .extracting(PlacedMark::at)
        .isNotEmpty()
        .doesNotContain(first.mark());
  }

  @Test
  void largeDrawingsMarkEveryState() {
    Asked asked = Asked.of(TOP);
    Drawing zoom = CylinderZoom.of(V8, 3, new Bounds(0, 0, 1068, 680), asked, GLASS);
    List<Sign> signs =
        zoom.anchors().stream()
            .flatMap(
                anchor ->
                    MarkPlan.of(anchor, asked, at -> PartState.FITTED, Set.of(), GLASS).stream())
            .map(PlacedMark::sign)
            .toList();
    assertThat(signs).hasSize(8).containsOnly(Sign.FITTED);
  }

  @Test
  void marksDifferByOutlineAlone() {
    Set<String> outlines = new HashSet<>();
    for (Sign sign : Sign.values()) {
      PlacedMark mark = MarkShapes.of(sign, new Point(0, 0), 46, GLASS);
      outlines.add(
          mark.shapes().stream()
              .filter(shape -> !(shape instanceof Shape.Words))
              .map(shape -> shape.role() + shape.toString())
              .collect(Collectors.joining()));
    }
    assertThat(outlines).hasSize(Sign.values().length);
  }

  @Test
  void lettersAreNeverSmallerThanTheLeast() {
    for (Sign sign : Sign.values()) {
      for (double side : new double[] {20, 30, 45, 46, 54, 100}) {
        assertThat(MarkShapes.of(sign, new Point(0, 0), side, GLASS).shapes())
            .filteredOn(shape -> shape instanceof Shape.Words)
            .allSatisfy(
                shape ->
                    assertThat(((Shape.Words) shape).size()).isGreaterThanOrEqualTo(36 * 0.99));
      }
    }
    assertThat(Arrays.stream(Sign.values()).filter(sign -> !sign.letter().isEmpty())).hasSize(7);
  }

  @Test
  void aZoneSaysWhatIsOutOfTheOrdinaryInIt() {
    Asked asked = Asked.of(TOP);
    Drawing drawing = EngineAbove.of(ABOVE, asked);
    Zone three =
        drawing.zones().stream()
            .filter(zone -> zone.target().equals(new Target.Cylinder(3)))
            .findFirst()
            .orElseThrow();
    Map<String, PartState> states = Map.of("pushrod@3EX", PartState.AT_SHOP);
    ZoneWords words =
        new ZoneWords(V8, drawing, asked, at -> states.getOrDefault(at.key(), PartState.IN));
    assertThat(words.of(three))
        .isEqualTo(
            "cylinder 3: cylinder 3, exhaust, pushrod at the machine shop; the rest in the engine");
    assertThat(new ZoneWords(V8, drawing, asked, at -> PartState.FITTED).of(three))
        .isEqualTo("cylinder 3: fitted");
  }

  @Test
  void aSplitCaseHasALeftAndARightHalf() {
    Layout opposed = SampleLayouts.ready("opposed-4");
    assertThat(PlaceWords.of(opposed, place("main-shell@M2U")))
        .isEqualTo("main 2, left case shell");
    assertThat(PlaceWords.of(opposed, place("main-shell@M2L")))
        .isEqualTo("main 2, right case shell");
    assertThat(PlaceWords.of(V8, place("main-shell@M2L"))).isEqualTo("main 2, lower shell");
  }

  @Test
  void untrackedKindsAreThinAndOthersThanTheChosenAreNotDrawnWhereTheyAreOut() {
    Asked asked = Asked.of(TOP, PartKind.ROCKER);
    assertThat(asked.look(PartKind.ROCKER, PartState.OUT)).isEqualTo(DrawnAs.OUT);
    assertThat(asked.look(PartKind.SPRING, PartState.OUT)).isEqualTo(DrawnAs.ABSENT);
    assertThat(asked.look(PartKind.SPRING, PartState.FITTED)).isEqualTo(DrawnAs.FAINT);
    assertThat(asked.look(PartKind.VALVE, PartState.OUT)).isEqualTo(DrawnAs.FAINT);
  }

  @Test
  void noArrowOfALargeDrawingReachesTheKeysBelowIt() {
    EngineGeometry wide =
        EngineGeometry.of(
            ABOVE.layout(), View.ABOVE, new Bounds(0, 0, 1500, 900), GLASS, BelowPanRail.NONE);
    Drawing drawing = EngineAbove.of(wide, Asked.of(TOP));
    Bounds frame = drawing.frame().grown(GLASS.gap());
    assertThat(drawing.parts())
        .flatExtracting(figure -> figure.pointer().here(GLASS))
        .allSatisfy(shape -> assertThat(frame.holds(shape.bounds())).isTrue());
  }

  @Test
  void rockersAndSpringsArePointedAtFromOutsideAndTheRestIsRinged() {
    Drawing drawing = EngineAbove.of(ABOVE, Asked.of(TOP));
    for (PartFigure figure : drawing.parts()) {
      PartKind kind = figure.place().kind();
      boolean arrow = kind == PartKind.ROCKER || kind == PartKind.SPRING;
      assertThat(figure.pointer().arrow()).isEqualTo(arrow);
      int outward = ABOVE.sign(((ValveSpot) figure.place().spot()).cylinder());
      if (arrow) {
        assertThat(Math.signum(Math.sin(figure.pointer().from()))).isEqualTo(outward);
      }
      Bounds frame = drawing.frame().grown(GLASS.gap());
      assertThat(figure.pointer().here(GLASS))
          .allSatisfy(shape -> assertThat(frame.holds(shape.bounds())).isTrue());
    }
  }
}
