package wherefrom.rules.consequence;

import static wherefrom.rules.consequence.PlaceScope.ALL;
import static wherefrom.rules.consequence.PlaceScope.HERE;
import static wherefrom.rules.consequence.Severity.BLOCK;
import static wherefrom.rules.consequence.Severity.WARN;

import java.util.List;
import java.util.Set;
import wherefrom.inspection.Sources;
import wherefrom.parts.PartKind;

/** Crank, rods, housings and shells. */
final class CrankRules {
  private static final Set<PartKind> ROD_SHELLS = Set.of(PartKind.ROD_SHELL);
  private static final Set<PartKind> MAIN_SHELLS = Set.of(PartKind.MAIN_SHELL);
  private static final Set<PartKind> SHELLS = Set.of(PartKind.ROD_SHELL, PartKind.MAIN_SHELL);

  static final List<Rule> ROWS =
      List.of(
          ground("rod", ChangeKind.ROD_JOURNALS_GROUND, Goods.ROD_GRINDING, ROD_SHELLS),
          ground("main", ChangeKind.MAIN_JOURNALS_GROUND, Goods.MAIN_GRINDING, MAIN_SHELLS)
              .after("thrust", "Check the crank's end play at the thrust bearing."),
          Rule.of("R17", "Crank polished only", ChangeKind.CRANK_POLISHED)
              .work("polishing", Count.ONE, Goods.POLISHING)
              .know("measure", WARN, ALL, SHELLS, "Shells may stay, but are measured again.")
              .first("shell-wall", ALL, SHELLS, "Measure shells and journals again.")
              .after("clearance", "Check the oil clearance of each bearing."),
          Rule.of("R20", "Rod resized, or bolts replaced", ChangeKind.ROD_RESIZED)
              .work("resizing", Count.PER_CYLINDER, Goods.RESIZING)
              .mustBeNew(WARN, HERE, ROD_SHELLS, "A resized rod takes new shells.")
              .know("bolts", WARN, HERE, Set.of(PartKind.ROD), "New bolts first, then resize.")
              .first("round", HERE, ROD_SHELLS, "Measure the big end for roundness, cap torqued.")
              .after("length", "Check the rod's length against the others."),
          Rule.of("R21", "Mains line-honed", ChangeKind.LINE_HONED)
              .work("line-honing", Count.ONE, Goods.LINE_HONING)
              .mustBeNew(WARN, ALL, MAIN_SHELLS, "Line-honed mains take new shells.")
              .first(
                  "caps",
                  ALL,
                  Set.of(PartKind.MAIN_CAP),
                  "See that each cap is on its own main, turned as before.")
              .after("line-clearance", "Check the oil clearance of each main bearing.")
              .after("line-end-play", "Check the crank's end play at the thrust bearing.")
              .after("free-turn", "Torque the main caps: the crank must turn freely by hand.")
              .after("deck", "Measure the deck clearance: the crank sits higher now.")
              .after("chain", "Check chain slack or gear backlash. Crank and cam are closer."),
          Rule.of("R22", "One rod or main bearing failed", ChangeKind.BEARING_FAILED)
              .mustBeNew(
                  BLOCK, ALL, SHELLS, "One bearing has failed. Replace all rod and main bearings.")
              .from(Sources.TM_237_BEARINGS)
              .leadsTo(ChangeKind.DEBRIS_LOOSE),
          Rule.of("R22", "Debris on its way through the oil", ChangeKind.DEBRIS_LOOSE)
              .first("journals", ALL, SHELLS, "Did grit reach the bearings? Look at every journal.")
              .first("galleries", ALL, SHELLS, "Plugs out, galleries brushed and flushed.")
              .after(
                  "pump",
                  "Open the oil pump and its pickup. Flush oil cooler, lines and hydraulic"
                      + " lifters.")
              .after(KnownCheck.FILTER_CUT.id(), "Cut the filter open; fit a new one."),
          Rule.of(
                  "R23",
                  "Cap lost, mixed up, or of another housing",
                  ChangeKind.CAP_LOST,
                  ChangeKind.CAP_REPLACED)
              .forbid(
                  KnownCheck.CAP_HOUSING.id(),
                  HERE,
                  Set.of(
                      PartKind.MAIN_CAP,
                      PartKind.ROD_CAP,
                      PartKind.MAIN_SHELL,
                      PartKind.ROD_SHELL,
                      PartKind.ROD),
                  "Caps are machined on their own housing. With another cap, have the housing"
                      + " machined again.")
              .because(Renewal.SIZE)
              .from(Sources.TM_256)
              .work("housing", Count.PER_MAIN, Goods.HOUSING)
              .first(
                  "align-bore-done",
                  HERE,
                  SHELLS,
                  "See that the housing was machined with this cap and measured."),
          Rule.of("R33", "New rod with its cap", ChangeKind.ROD_REPLACED)
              .brings(PartKind.ROD, HERE)
              .mustBeNew(WARN, HERE, ROD_SHELLS, "A new rod takes new shells.")
              .first(
                  "big-end",
                  HERE,
                  Set.of(PartKind.ROD),
                  "Measure the new rod's big end for roundness, its cap torqued.")
              .after("weight", "Weigh the new rod, end for end, against the others.")
              .after("side-play", "Check the side play of the rods on that pin."));

  private CrankRules() {}

  private static Rule ground(String which, ChangeKind change, Goods work, Set<PartKind> shells) {
    return Rule.of("R16", "Crank ground, " + which + " journals", change)
        .work(which + "-grinding", Count.ONE, work)
        .mustBeNew(
            which + "-new",
            BLOCK,
            ALL,
            shells,
            "The " + which + " journals were ground: all " + which + " shells to that undersize.")
        .because(Renewal.SIZE)
        .know(
            which + "-all-alike",
            WARN,
            ALL,
            shells,
            "When one " + which + " journal is ground, all of them are ground alike.")
        .from(Sources.TM_262)
        .first(which + "-fillets", ALL, shells, "Look at the fillets and oil-hole chamfers.")
        .after(which + "-clearance", "Check the oil clearance of each " + which + " bearing.");
  }
}
