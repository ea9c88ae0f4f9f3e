package wherefrom.rules.consequence;

import static wherefrom.rules.consequence.PlaceScope.ALL;
import static wherefrom.rules.consequence.Severity.BLOCK;
import static wherefrom.rules.consequence.Severity.WARN;

import java.util.List;
import java.util.Set;
import wherefrom.parts.PartKind;

/** Springs, crank and pistons that are not those which came out. All are common practice. */
final class OtherPartsRules {
  private static final Set<PartKind> SPRINGS = Set.of(PartKind.SPRING);
  private static final Set<PartKind> SHELLS = Set.of(PartKind.ROD_SHELL, PartKind.MAIN_SHELL);
  private static final Set<PartKind> PISTONS = Set.of(PartKind.PISTON);

  static final List<Rule> ROWS =
      List.of(
          Rule.of("R30", "Other valve springs", ChangeKind.SPRINGS_CHANGED)
              .mustBeNew(
                  WARN,
                  ALL,
                  SPRINGS,
                  "Buy other springs as one set. A used one among them has another load.")
              .because(Renewal.SORT)
              .first(
                  "spring-seat",
                  ALL,
                  Set.of(PartKind.RETAINER, PartKind.KEEPERS),
                  "See that retainers, keepers and spring seats fit the other springs.")
              .after("guide", "Check that the springs clear the guides and the seals around them.")
              .leadsTo(ChangeKind.SPRINGS_SHIMMED),
          Rule.of("R30", "Springs set to another height", ChangeKind.SPRINGS_SHIMMED)
              .first(
                  "spring-height",
                  ALL,
                  SPRINGS,
                  "Measure the installed height at every valve. Shim each spring to it.")
              .first(
                  "coil-bind",
                  ALL,
                  SPRINGS,
                  "Check for coil bind: installed height minus solid height minus lift.")
              .first(
                  "retainer-seal",
                  ALL,
                  SPRINGS,
                  "Check the gap from retainer to seal at full lift.")
              .first(
                  "loads",
                  ALL,
                  SPRINGS,
                  "Check seat and open load against the cam card, at these heights."),
          Rule.of("R31", "Another crank", ChangeKind.CRANK_CHANGED)
              .mustBeNew(
                  BLOCK,
                  ALL,
                  SHELLS,
                  "Used shells have worn in to the journals of the old crank. Another crank"
                      + " takes new rod and main shells. They must fit the size of its own journals.")
              .because(Renewal.SIZE)
              .buy("crank", Count.ONE, Goods.CRANK)
              .first(
                  "crank-journals",
                  ALL,
                  SHELLS,
                  "Measure every journal of the other crank. Order the shells to its undersize.")
              .know(
                  "pistons-and-rods",
                  WARN,
                  ALL,
                  Set.of(PartKind.PISTON, PartKind.ROD),
                  "Another stroke needs another pin height in the pistons, or other rods.")
              .after("crank-clearance", "Check the oil clearance of each rod and main bearing.")
              .after("crank-end-play", "Check the crank's end play at the thrust bearing.")
              .after("rod-side-play", "Check the side play of the rods on their pins.")
              .after("crank-balance", "Have the crank balanced with the rods and pistons it gets.")
              .after(
                  "rod-to-cam",
                  "Turn the engine by hand. Rods and their bolts must clear cam, block and pan.")
              .after("crank-ends", "See that damper, flywheel and pilot fit the other crank.")
              .after("crank-deck", "Measure the deck clearance of every piston.")
              .after(
                  "crank-ratio", "Work out the compression ratio again: the stroke is different.")
              .after(
                  "crank-piston-valve",
                  "Check the clearance from piston to valve with clay or dial."),
          Rule.of("R32", "Other pistons", ChangeKind.PISTONS_CHANGED)
              .mustBeNew(
                  WARN,
                  ALL,
                  PISTONS,
                  "Other pistons go in as one set, alike in crown and weight. Mix in no used"
                      + " one.")
              .because(Renewal.SORT)
              .buy("rings", Count.PER_CYLINDER, Goods.RING_SETS)
              .first("piston-to-bore", ALL, PISTONS, "Measure piston to bore for each bore.")
              .first(
                  "pin-and-front",
                  ALL,
                  PISTONS,
                  "Check each pin in piston and rod. Check which side the front mark faces.")
              .after("other-ring-gap", "Set every ring gap in its own bore.")
              .after("piston-deck", "Measure the deck clearance of every piston.")
              .after(
                  "piston-ratio", "Work out the compression ratio again: the crown is different.")
              .after(
                  "other-piston-valve",
                  "Check the clearance from piston to valve with clay or dial.")
              .after("piston-balance", "Check the balance with the other pistons."));

  private OtherPartsRules() {}
}
