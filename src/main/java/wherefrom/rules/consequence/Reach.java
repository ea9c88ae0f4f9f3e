package wherefrom.rules.consequence;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wherefrom.engine.Bank;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.Layout;
import wherefrom.engine.Site;
import wherefrom.engine.Spots;
import wherefrom.engine.ValveSpot;

/** How much of the engine one change speaks of. */
public enum Reach {
  WHOLE,
  BANK,
  VALVE,
  CYLINDER,
  ROD_OR_MAIN,
  PLACE;

  /** Every place that a change of this reach can name; places of parts are not listed. */
  public List<String> where(Layout layout) {
    return switch (this) {
      case WHOLE, PLACE -> List.of("");
      case BANK -> layout.banks().stream().map(Bank::name).toList();
      case VALVE -> Spots.valves(layout).stream().map(ValveSpot::key).toList();
      case CYLINDER -> Spots.bores(layout).stream().map(BoreSpot::key).toList();
      case ROD_OR_MAIN ->
          Stream.concat(
                  layout.cylinders().stream().map(Site.BigEnd::new),
                  IntStream.rangeClosed(1, layout.mains()).mapToObj(Site.Main::new))
              .map(Site::key)
              .toList();
    };
  }
}
