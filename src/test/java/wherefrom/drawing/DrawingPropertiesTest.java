package wherefrom.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Layout;
import wherefrom.engine.LayoutCheck;
import wherefrom.engine.ReadyLayouts;
import wherefrom.parts.Home;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;

/** What holds of every drawing of every engine, on small glass and large. */
class DrawingPropertiesTest {
  private static final Set<PartKind> ALL = PartKind.all();
  private static final long LAYOUTS = Long.getLong("drawing.layouts", 24);
  private static final double ROUNDING = 1e-6;

  /** A view of an engine with the places that it must show. */
  private record Case(String name, Layout layout, Drawing drawing, List<Place> places) {
    String title() {
      return name + " of " + layout + ": ";
    }
  }

  private static Stream<Layout> layouts() {
    return Stream.concat(
        ReadyLayouts.all().stream(), LongStream.range(0, LAYOUTS).mapToObj(SampleLayouts::drawn));
  }

  private static List<Place> places(Layout layout, Collection<PartKind> kinds) {
    return Places.of(layout, EnumSet.copyOf(kinds));
  }

  private static List<Case> cases(Layout layout, Bounds room, Glass glass) {
    List<Case> cases = new ArrayList<>();
    engines(layout, room, glass, cases);
    cases.add(zoom(layout, layout.cylinders().get(0), room, glass));
    int count = Math.min(layout.mains(), MainsPage.fitting(room.width(), glass));
    Set<Integer> shown = new HashSet<>();
    for (int main = 1; main <= count; main++) {
      shown.add(main);
    }
    List<Place> mains =
        places(layout, Set.of(PartKind.MAIN_SHELL, PartKind.MAIN_CAP)).stream()
            .filter(place -> shown.contains(number(place)))
            .toList();
    Drawing page = MainsPage.of(layout, 1, count, room, Asked.of(ALL), glass);
    cases.add(new Case("mains", layout, page, mains));
    return cases;
  }

  private static int number(Place place) {
    return Integer.parseInt(place.spot().figures().replaceAll("\\D", ""));
  }

  private static void engines(Layout layout, Bounds room, Glass glass, List<Case> cases) {
    for (BelowPanRail foot : BelowPanRail.values()) {
      EngineGeometry below = EngineGeometry.of(layout, View.BELOW, room, glass, foot);
      Set<PartKind> kinds =
          EnumSet.of(
              PartKind.ROD_CAP,
              PartKind.ROD_SHELL,
              PartKind.ROD,
              PartKind.MAIN_CAP,
              PartKind.MAIN_SHELL);
      Drawing drawing = EngineBelow.of(below, Asked.of(ALL));
      cases.add(new Case("below, " + foot, layout, drawing, places(layout, kinds)));
    }
    EngineGeometry above = EngineGeometry.of(layout, View.ABOVE, room, glass, BelowPanRail.NONE);
    Set<PartKind> always =
        EnumSet.of(PartKind.ROCKER, PartKind.PUSHROD, PartKind.LIFTER, PartKind.SPRING);
    cases.add(
        new Case("above", layout, EngineAbove.of(above, Asked.of(ALL)), places(layout, always)));
    for (PartKind kind : ALL) {
      if (kind.home() == Home.VALVE || kind == PartKind.CAM_BEARING) {
        Set<PartKind> kinds = EnumSet.copyOf(always);
        kinds.add(kind);
        Drawing drawing = EngineAbove.of(above, Asked.of(ALL, kind));
        cases.add(new Case("above, " + kind, layout, drawing, places(layout, kinds)));
      }
    }
  }

  private static Case zoom(Layout layout, int cylinder, Bounds room, Glass glass) {
    List<Place> places =
        places(layout, ALL).stream()
            .filter(place -> place.kind().home() != Home.MAIN)
            .filter(place -> place.kind() != PartKind.CAM_BEARING)
            .filter(place -> number(place) == cylinder)
            .toList();
    Drawing drawing = CylinderZoom.of(layout, cylinder, room, Asked.of(ALL), glass);
    return new Case("zoom", layout, drawing, places);
  }

  private static Stream<Case> cases() {
    Glass glass = Glass.screen(Glass.UNITS_PER_MM, 1);
    Glass fine = Glass.screen(3.78, 2);
    return layouts()
        .flatMap(
            layout ->
                Stream.of(
                        cases(layout, new Bounds(188, 130, 1068, 520), glass),
                        cases(layout, new Bounds(24, 74, 1232, 680), glass),
                        cases(layout, new Bounds(10, 10, 500, 700), fine))
                    .flatMap(List::stream));
  }

  @Test
  void theDrawnLayoutsAreSound() {
    assertThat(layouts()).allSatisfy(each -> assertThat(LayoutCheck.faults(each)).isEmpty());
  }

  @Test
  void everyPlaceOfAViewHasOneFigureInIt() {
    cases()
        .forEach(
            one ->
                assertThat(one.drawing().parts().stream().map(PartFigure::place).toList())
                    .as(one.name() + " of " + one.layout())
                    .containsExactlyInAnyOrderElementsOf(one.places()));
  }

  @Test
  void nothingOfACastingOrPartLiesOutsideTheFrame() {
    List<String> outside = new ArrayList<>();
    cases()
        .forEach(
            one -> {
              Bounds frame = one.drawing().frame().grown(outside(one));
              shapes(one.drawing())
                  .filter(shape -> !frame.holds(shape.bounds()))
                  .forEach(shape -> outside.add(one.title() + shape));
            });
    assertThat(outside).isEmpty();
  }

  private static Stream<Shape> shapes(Drawing drawing) {
    return Stream.concat(
        drawing.ground().stream(),
        drawing.parts().stream().flatMap(figure -> figure.shapes().stream()));
  }

  /** The large drawings' springs and bolts stand out by a few units, within the gap beside them. */
  private static double outside(Case one) {
    boolean large = one.name().equals("zoom") || one.name().equals("mains");
    return large ? 8 * one.drawing().glass().unit() : ROUNDING;
  }

  @Test
  void numbersStandWithinTheFrameAndCoverNoOther() {
    List<String> wrong = new ArrayList<>();
    cases()
        .filter(one -> one.name().startsWith("above") || one.name().startsWith("below"))
        .forEach(
            one -> {
              List<Shape> words = one.drawing().words();
              Bounds frame = one.drawing().frame().grown(one.drawing().glass().px(8));
              for (int at = 0; at < words.size(); at++) {
                Bounds box = words.get(at).bounds();
                boolean free =
                    words.subList(at + 1, words.size()).stream()
                        .allMatch(other -> box.gapTo(other.bounds()) > 0);
                if (!free || !frame.holds(box)) {
                  wrong.add(one.title() + words.get(at));
                }
              }
            });
    assertThat(wrong).isEmpty();
  }

  @Test
  void zonesAreForAFingerAndApart() {
    List<String> wrong = new ArrayList<>();
    cases()
        .forEach(
            one -> {
              List<Zone> zones = one.drawing().zones();
              assertThat(zones).isNotEmpty();
              for (int at = 0; at < zones.size(); at++) {
                Zone zone = zones.get(at);
                double gap = one.drawing().glass().gap() - ROUNDING;
                boolean apart =
                    zones.subList(at + 1, zones.size()).stream()
                        .allMatch(other -> zone.bounds().gapTo(other.bounds()) >= gap);
                if (!apart || !isForAFinger(zone, one.drawing())) {
                  wrong.add(one.title() + zone);
                }
              }
            });
    assertThat(wrong).isEmpty();
  }

  /** What is one zone because it is small as a whole may be narrower, but no less high. */
  private static boolean isForAFinger(Zone zone, Drawing drawing) {
    double least = drawing.glass().finger() - ROUNDING;
    boolean whole =
        zone.target() instanceof Target.Whole || drawing.zones().size() == columns(drawing);
    return drawing.frame().grown(ROUNDING).holds(zone.bounds())
        && (whole || Math.min(zone.bounds().width(), zone.bounds().height()) >= least);
  }

  /** Columns of a drawing that is too small for more zones. */
  private static long columns(Drawing drawing) {
    return drawing.zones().stream().map(zone -> zone.bounds().x()).distinct().count();
  }

  @Test
  void eachTrackedPartOfALargeDrawingIsInOneZone() {
    cases()
        .filter(one -> one.name().equals("zoom") || one.name().equals("mains"))
        .forEach(
            one ->
                assertThat(
                        one.drawing().zones().stream()
                            .flatMap(zone -> ((Target.Parts) zone.target()).places().stream())
                            .toList())
                    .as(one.name() + " of " + one.layout())
                    .containsExactlyInAnyOrderElementsOf(one.places()));
  }

  @Test
  void outlinesOfDifferentKindsDiffer() {
    Bounds square = new Bounds(0, 0, 100, 100);
    Glass glass = Glass.screen(Glass.UNITS_PER_MM, 1);
    for (Layout layout : ReadyLayouts.all()) {
      List<String> outlines =
          ALL.stream().map(kind -> KindOutline.of(kind, layout, square, glass).toString()).toList();
      assertThat(outlines).doesNotHaveDuplicates();
    }
  }

  @Test
  void outlinesOfKindsDifferFromAboveToo() {
    for (Layout layout : ReadyLayouts.all()) {
      Glass glass = Glass.screen(Glass.UNITS_PER_MM, 1);
      Bounds room = new Bounds(0, 0, 1000, 600);
      EngineGeometry at = EngineGeometry.of(layout, View.ABOVE, room, glass, BelowPanRail.NONE);
      Set<String> seen = new HashSet<>();
      for (PartKind kind : List.of(PartKind.PIVOT, PartKind.VALVE, PartKind.RETAINER)) {
        seen.add(first(EngineAbove.of(at, Asked.of(ALL, kind)), kind));
      }
      Drawing drawing = EngineAbove.of(at, Asked.of(ALL, PartKind.KEEPERS));
      Set<PartKind> kinds =
          drawing.parts().stream().map(figure -> figure.place().kind()).collect(Collectors.toSet());
      kinds.forEach(kind -> seen.add(first(drawing, kind)));
      assertThat(seen).hasSize(3 + kinds.size());
    }
  }

  /**
   * A place of a kind that is drawn only where it is asked for stands among the others: they stay
   * as they are, with the marks of what is out.
   */
  @Test
  void theOneSmallPartThatIsMeantMakesNoOtherLookOut() {
    for (String key : List.of("pivot@1IN", "valve@3EX", "cam-bearing@C2", "piston@B2")) {
      Place meant = Place.find(key).orElseThrow();
      Asked asked = new Asked(ALL, Optional.empty(), Set.of(meant));
      Layout layout = SampleLayouts.ready("v8-odd-even");
      Glass glass = Glass.screen(Glass.UNITS_PER_MM, 1);
      Bounds room = new Bounds(0, 0, 1000, 600);
      boolean below = meant.kind() == PartKind.PISTON;
      EngineGeometry at =
          EngineGeometry.of(
              layout, below ? View.BELOW : View.ABOVE, room, glass, BelowPanRail.NONE);
      Drawing drawing = below ? EngineBelow.of(at, asked) : EngineAbove.of(at, asked);
      assertThat(drawing.parts())
          .as(key)
          .extracting(PartFigure::place)
          .filteredOn(place -> place.kind() == meant.kind())
          .containsExactly(meant);
      for (PartFigure figure : drawing.parts()) {
        assertThat(asked.look(figure.place(), place -> PartState.IN))
            .as("%s beside %s", figure.place().key(), key)
            .isEqualTo(DrawnAs.IN);
        assertThat(asked.isMeant(figure.place().kind())).isTrue();
      }
    }
  }

  /** The outline of a kind's first figure, moved to the corner. */
  private static String first(Drawing drawing, PartKind kind) {
    Optional<PartFigure> found =
        drawing.parts().stream().filter(figure -> figure.place().kind() == kind).findFirst();
    PartFigure figure = found.orElseThrow();
    Bounds box = figure.bounds();
    return figure.shapes().stream()
        .map(shape -> shape.role() + " " + Math.round(shape.bounds().width() * 10))
        .collect(Collectors.joining(",", "" + Math.round(box.height() * 10), ""));
  }
}
