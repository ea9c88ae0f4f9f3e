package wherefrom.rules.consequence;

import static wherefrom.rules.consequence.PlaceScope.ALL;
import static wherefrom.rules.consequence.PlaceScope.MATES;
import static wherefrom.rules.consequence.Severity.WARN;

import java.util.EnumSet;
import java.util.List;
import wherefrom.parts.PartKind;

/** What findings and swaps mean. */
final class FindingRules {
  static final List<Rule> ROWS =
      List.of(
          Rule.of("R24", "Cam gear broken", ChangeKind.PLASTIC_GEAR_BROKEN)
              .buy("chain-and-gears", Count.ONE, Goods.CHAIN_AND_GEARS)
              .after("pan", "Pan and pickup off. Find every crumb.")
              .first(
                  "bent",
                  ALL,
                  EnumSet.of(PartKind.PUSHROD, PartKind.VALVE),
                  "Look for bent pushrods and valves.")
              .leadsTo(ChangeKind.DEBRIS_LOOSE),
          Rule.of("R41", "Plastic cam gear, whole", ChangeKind.PLASTIC_GEAR_OLD)
              .buy("chain-and-gears", Count.ONE, Goods.CHAIN_AND_GEARS),
          Rule.of("R28", "Part fitted at another place", ChangeKind.SWAPPED)
              .know(
                  "not-mated",
                  WARN,
                  MATES,
                  PartKind.all(),
                  "The parts here are no longer worn in to each other.")
              .after("new-mate", "Check the parts at this place as new mates."));

  private FindingRules() {}
}
