package wherefrom.parts;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.CamBearingSpot;
import wherefrom.engine.Layout;
import wherefrom.engine.MainSpot;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.Spot;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;

/**
 * What item and card numbers stand for in jobs whose logbook does not say so itself: those of the
 * first versions. Frozen: tags printed by it hang on parts. It goes by no order but its own, and
 * what it gives is held to printed lists by a test.
 */
public final class FirstNumbering {
  /** The kinds by stage of taking apart; at one spot in this order. */
  private static final List<List<PartKind>> STAGES =
      List.of(
          List.of(PartKind.ROCKER, PartKind.PIVOT, PartKind.PUSHROD),
          List.of(PartKind.LIFTER),
          List.of(PartKind.KEEPERS, PartKind.RETAINER, PartKind.SPRING, PartKind.VALVE),
          List.of(PartKind.ROD_CAP, PartKind.ROD_SHELL, PartKind.ROD, PartKind.PISTON),
          List.of(PartKind.MAIN_CAP, PartKind.MAIN_SHELL),
          List.of(PartKind.CAM_BEARING));

  private static final List<ValveSide> SIDES = List.of(ValveSide.INTAKE, ValveSide.EXHAUST);
  private static final List<ShellHalf> HALVES = List.of(ShellHalf.UPPER, ShellHalf.LOWER);

  private FirstNumbering() {}

  /** The places by item number: the first is number 1. */
  public static List<Place> items(Layout layout, Set<PartKind> kinds) {
    List<Spot> spots = cards(layout);
    return STAGES.stream()
        .flatMap(stage -> spots.stream().flatMap(spot -> at(spot, stage)))
        .filter(place -> kinds.contains(place.kind()))
        .filter(place -> place.kind() != PartKind.MAIN_CAP || layout.mainCaps())
        .toList();
  }

  private static Stream<Place> at(Spot spot, Collection<PartKind> stage) {
    return stage.stream()
        .filter(kind -> Place.canLive(kind, spot))
        .map(kind -> new Place(kind, spot));
  }

  /** The spots by the number of their place card, whatever is tracked: the first is number 1. */
  public static List<Spot> cards(Layout layout) {
    List<Integer> cylinders = layout.cylinders();
    List<Spot> spots = new ArrayList<>();
    cylinders.forEach(cylinder -> SIDES.forEach(side -> spots.add(new ValveSpot(cylinder, side))));
    cylinders.forEach(cylinder -> spots.add(new BoreSpot(cylinder)));
    cylinders.forEach(cylinder -> HALVES.forEach(half -> spots.add(new RodSpot(cylinder, half))));
    for (int main = 1; main <= layout.mains(); main++) {
      for (ShellHalf half : HALVES) {
        spots.add(new MainSpot(main, half));
      }
    }
    for (int bearing = 1; bearing <= layout.camBearings(); bearing++) {
      spots.add(new CamBearingSpot(bearing));
    }
    return List.copyOf(spots);
  }
}
