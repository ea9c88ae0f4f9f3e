package wherefrom.rules.consequence;

import static wherefrom.rules.consequence.PlaceScope.BANK;
import static wherefrom.rules.consequence.PlaceScope.HERE;
import static wherefrom.rules.consequence.PlaceScope.SIDE;
import static wherefrom.rules.consequence.Severity.BLOCK;
import static wherefrom.rules.consequence.Severity.WARN;

import java.util.List;
import java.util.Set;
import wherefrom.inspection.Sources;
import wherefrom.parts.PartKind;

/** Valves and their seats. */
final class ValveRules {
  private static final Set<PartKind> VALVES = Set.of(PartKind.VALVE);
  private static final Set<PartKind> SPRINGS = Set.of(PartKind.SPRING);

  static final List<Rule> ROWS =
      List.of(
          Rule.of("R12", "Valve job", ChangeKind.VALVE_JOB)
              .work("grinding", Count.PER_BANK, Goods.VALVE_JOB)
              .buy("stem-seals", Count.PER_VALVE, Goods.STEM_SEALS)
              .first(
                  "installed-height", BANK, SPRINGS, "Measure installed height. Shim the springs.")
              .from(Sources.TM_289)
              .first("tip-height", BANK, VALVES, "Check the height of the valve tips.")
              .first("margin", BANK, VALVES, "Check the valve margins.")
              .first("seat-width", BANK, VALVES, "Measure width and place of each seat's contact.")
              .after("chamber", "Measure the chambers again in cc.")
              .after(
                  "leak-test", "Leak-test every valve with its plug in: mineral spirits or vacuum.")
              .leadsTo(ChangeKind.GEOMETRY_CHANGED),
          Rule.of("R13", "New valve", ChangeKind.VALVE_REPLACED)
              .brings(PartKind.VALVE, HERE)
              .buy("stem-seal", Count.PER_VALVE, Goods.STEM_SEALS)
              .first("guide", HERE, VALVES, "Measure the clearance of the new valve in its guide.")
              .first("seat", HERE, VALVES, "Lap or grind that seat to the new valve.")
              .know(
                  "record",
                  WARN,
                  HERE,
                  VALVES,
                  "The place's record starts again with the new valve.")
              .after("leak-test", "Leak-test the new valve: mineral spirits or vacuum.")
              .leadsTo(ChangeKind.GEOMETRY_CHANGED),
          Rule.of(
                  "R38",
                  "Larger valves",
                  ChangeKind.LARGER_VALVES,
                  ChangeKind.LARGER_INTAKE_VALVES,
                  ChangeKind.LARGER_EXHAUST_VALVES)
              .mustBeNew(
                  BLOCK, SIDE, VALVES, "The seats are cut for larger valves. Fit no old one.")
              .because(Renewal.SIZE)
              .buy("stem-seals", SIDE, Count.PER_VALVE, Goods.STEM_SEALS)
              .work("seats-cut", SIDE, Count.PER_VALVE, Goods.SEATS_CUT)
              .first(
                  "seats",
                  SIDE,
                  VALVES,
                  "See that the seats carry the larger valves: inserts, water jacket, width.")
              .first("guide", SIDE, VALVES, "Measure each new valve in its guide.")
              .first(
                  "retainer-fit",
                  SIDE,
                  Set.of(PartKind.RETAINER, PartKind.KEEPERS),
                  "See that retainers and keepers fit the new stems.")
              .first(
                  "springs",
                  SIDE,
                  SPRINGS,
                  "Measure installed height and loads. A larger valve is heavier, maybe longer.")
              .after("throats", "See that the throats were opened and blended to the new seats.")
              .after("chamber", "Measure the chambers again in cc.")
              .after("compression-ratio", "Work out the compression ratio again.")
              .after(
                  "valve-bore", "Turn by hand. Each valve must clear the bore's edge at full lift.")
              .after(
                  "valve-valve",
                  "Turn by hand. Intake and exhaust must clear each other at overlap.")
              .after(
                  "piston-valve",
                  "Check piston to valve, deep and sideways. The pockets fit smaller valves.")
              .after("leak-test", "Leak-test every new valve: mineral spirits or vacuum.")
              .leadsTo(ChangeKind.GEOMETRY_CHANGED));

  private ValveRules() {}
}
