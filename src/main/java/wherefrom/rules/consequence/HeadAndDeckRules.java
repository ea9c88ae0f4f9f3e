package wherefrom.rules.consequence;

import static wherefrom.rules.consequence.Cover.ALL;
import static wherefrom.rules.consequence.Severity.WARN;

import java.util.List;
import java.util.Set;
import wherefrom.inspection.Sources;
import wherefrom.parts.PartKind;

/** Milled faces, bores, washing, and what is always new. */
final class HeadAndDeckRules {
  private static final Set<PartKind> PISTONS = Set.of(PartKind.PISTON);
  private static final String MILLED = Sources.REPAIR_MANUAL + "; " + Sources.TM_8000;

  static final List<Rule> ROWS =
      List.of(
          milled(Rule.of("R14", "Head milled", ChangeKind.HEAD_MILLED)).source(MILLED),
          milled(Rule.of("R15", "Deck milled", ChangeKind.DECK_MILLED))
              .after("deck-clearance", "Measure the deck clearance of every piston.")
              .after("timing-cover", "Check the line of timing cover and gaskets."),
          Rule.of("R18", "Block bored", ChangeKind.BORED)
              .mustBeNew(
                  Severity.BLOCK,
                  ALL,
                  PISTONS,
                  "Pistons and rings, all to the same oversize. Others allow mixed sizes: ask the"
                      + " machinist.")
              .because(Renewal.SIZE)
              .buy("rings", Count.PER_CYLINDER, "piston ring sets, oversize")
              .first("piston-clearance", ALL, PISTONS, "Measure piston to bore for each bore.")
              .after("ring-gap", "Set every ring gap in its own bore.")
              .after("balance", "Check the balance with the new pistons.")
              .after("compression-ratio", "Work the compression ratio anew: the bore is bigger."),
          Rule.of("R19", "Honed only", ChangeKind.HONED)
              .buy("rings", Count.PER_CYLINDER, "piston ring sets")
              .first("piston-clearance", Cover.HERE, PISTONS, "Measure piston to bore.")
              .after("ring-gap", "Set every ring gap in its own bore."),
          Rule.of("R27", "Always new", ChangeKind.TAKEN_APART)
              .buy("gaskets", Count.ONE, "gasket set")
              .buy("seals", Count.ONE, "seals")
              .buy(
                  "stretch-bolts",
                  Count.ONE,
                  "bolts that are tightened by angle, where there are any")
              .know(
                  "keepers",
                  WARN,
                  ALL,
                  Set.of(PartKind.KEEPERS),
                  "A damaged keeper is always replaced, as a pair."),
          Rule.of("R29", "Block hot-tanked", ChangeKind.HOT_TANKED)
              .mustBeNew(
                  WARN,
                  ALL,
                  Set.of(PartKind.CAM_BEARING),
                  "The hot tank eats cam bearings: they must be new.")
              .buy("plugs", Count.ONE, "core plugs and gallery plugs")
              .after("plugs-in", "See that every core plug and gallery plug is back in."));

  private HeadAndDeckRules() {}

  private static Rule milled(Rule rule) {
    return rule.buy("head-gasket", Count.PER_BANK, "head gaskets")
        .know("equal-cut", WARN, ALL, Set.of(), "Cut both heads of a V engine alike.")
        .onlyFor(Setting::isV)
        .after("compression-ratio", "Work the compression ratio anew.")
        .after("piston-valve", "Check the clearance from piston to valve with clay or dial.")
        .after("intake-faces", "Correct the intake faces, or the manifold will not fit.")
        .onlyFor(Setting::isV)
        .after("dowels", "Check that the dowels do not bottom.")
        .after("least-thickness", "Check the least thickness that the manual allows.")
        .leadsTo(ChangeKind.GEOMETRY_CHANGED);
  }
}
