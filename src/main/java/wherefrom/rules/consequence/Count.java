package wherefrom.rules.consequence;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.Site;
import wherefrom.engine.Spot;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** How many an engine needs of what has no place of its own, and where. */
enum Count {
  ONE,
  PER_BANK,
  PER_CYLINDER,
  PER_VALVE,
  PER_MAIN;

  /** Where each is, as far as the change covers it. */
  List<String> at(PlaceScope cover, Change change, Setting setting) {
    return switch (this) {
      case ONE -> List.of("");
      case PER_BANK -> spread(PartKind.PISTON, cover, change, setting, bank(setting));
      case PER_CYLINDER -> spread(PartKind.PISTON, cover, change, setting, Spot::key);
      case PER_VALVE -> spread(PartKind.VALVE, cover, change, setting, Spot::key);
      case PER_MAIN ->
          spread(PartKind.MAIN_SHELL, cover, change, setting, spot -> Site.around(spot).key());
    };
  }

  private static Function<Spot, String> bank(Setting setting) {
    return spot -> setting.layout().findBank(((BoreSpot) spot).cylinder()).orElseThrow().name();
  }

  private static List<String> spread(
      PartKind kind,
      PlaceScope cover,
      Change change,
      Setting setting,
      Function<Spot, String> name) {
    return setting.listAll(Set.of(kind), cover, change).stream()
        .map(Place::spot)
        .map(name)
        .distinct()
        .toList();
  }
}
