package wherefrom.rules.consequence;

import static wherefrom.rules.consequence.PlaceScope.ALL;
import static wherefrom.rules.consequence.Severity.WARN;

import java.util.List;
import java.util.Set;
import wherefrom.parts.PartKind;

/** Bores, washing, and what is always new. All are common practice. */
final class BlockRules {
  private static final Set<PartKind> PISTONS = Set.of(PartKind.PISTON);

  static final List<Rule> ROWS =
      List.of(
          Rule.of("R18", "Block bored", ChangeKind.BORED)
              .work("boring", ALL, Count.PER_CYLINDER, Goods.BORING)
              .mustBeNew(
                  Severity.BLOCK,
                  ALL,
                  PISTONS,
                  "Pistons and rings, all to the same oversize. Others allow mixed sizes. Ask"
                      + " the machinist.")
              .because(Renewal.SIZE)
              .buy("rings", ALL, Count.PER_CYLINDER, Goods.RING_SETS)
              .ofSort(Goods.OVERSIZE_RING_SETS)
              .first("piston-clearance", ALL, PISTONS, "Measure piston to bore for each bore.")
              .after("ring-gap", "Set every ring gap in its own bore.")
              .after("gasket-hole", "See that the head gasket's hole clears the new bore.")
              .after("balance", "Check the balance with the new pistons.")
              .after(
                  "compression-ratio", "Work out the compression ratio again: the bore is larger."),
          Rule.of("R19", "Honed only", ChangeKind.HONED)
              .work("honing", Count.PER_CYLINDER, Goods.HONING)
              .buy("rings", Count.PER_CYLINDER, Goods.RING_SETS)
              .first("piston-clearance", PlaceScope.HERE, PISTONS, "Measure piston to bore.")
              .after("ring-gap", "Set every ring gap in its own bore."),
          Rule.of("R27", "Always new", ChangeKind.TAKEN_APART)
              .buy("gaskets", Count.ONE, Goods.GASKET_SET)
              .buy("seals", Count.ONE, Goods.SEALS)
              .buy("stretch-bolts", Count.ONE, Goods.STRETCH_BOLTS)
              .know(
                  "keepers",
                  WARN,
                  ALL,
                  Set.of(PartKind.KEEPERS),
                  "A damaged keeper is always replaced, as a pair."),
          Rule.of("R29", "Block hot-tanked", ChangeKind.HOT_TANKED)
              .work("tank", Count.ONE, Goods.TANKING)
              .mustBeNew(
                  WARN,
                  ALL,
                  Set.of(PartKind.CAM_BEARING),
                  "The hot tank ruins cam bearings. They must be new.")
              .buy("plugs", Count.ONE, Goods.PLUGS)
              .after("plugs-in", "See that every core plug and gallery plug is back in."));

  private BlockRules() {}
}
