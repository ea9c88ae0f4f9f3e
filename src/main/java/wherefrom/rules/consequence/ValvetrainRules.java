package wherefrom.rules.consequence;

import static wherefrom.rules.consequence.Cover.ALL;
import static wherefrom.rules.consequence.Cover.BANK;
import static wherefrom.rules.consequence.Cover.HERE;
import static wherefrom.rules.consequence.Severity.BLOCK;
import static wherefrom.rules.consequence.Severity.WARN;

import java.util.List;
import java.util.Set;
import wherefrom.inspection.Sources;
import wherefrom.parts.PartKind;

/** Pushrods, rockers, valves and springs. */
final class ValvetrainRules {
  private static final Set<PartKind> PUSHRODS = Set.of(PartKind.PUSHROD);
  private static final Set<PartKind> ROCKERS = Set.of(PartKind.ROCKER);
  private static final Set<PartKind> VALVES = Set.of(PartKind.VALVE);
  private static final Set<PartKind> SPRINGS = Set.of(PartKind.SPRING);

  static final List<Rule> ROWS =
      List.of(
          Rule.of("R8", "New pushrod", ChangeKind.PUSHROD_REPLACED)
              .source(Sources.TM_225)
              .know(
                  "worn-mate",
                  WARN,
                  HERE,
                  Set.of(PartKind.PUSHROD, PartKind.ROCKER),
                  "Do not pair a worn ball with a new socket, or a new ball with a worn one.")
              .first("both-ends", HERE, PUSHRODS, "Look at both of its mates: rocker and lifter."),
          Rule.of("R9", "More valve lift", ChangeKind.LIFT_INCREASED)
              .first("coil-bind", ALL, SPRINGS, "Check the springs for coil bind at full lift.")
              .first("retainer-seal", ALL, SPRINGS, "Check the gap from retainer to seal.")
              .first("rocker-slot", ALL, ROCKERS, "Check that the rocker's slot is long enough.")
              .after("piston-valve", "Check the clearance from piston to valve with clay or dial."),
          Rule.of("R10", "New rocker", ChangeKind.ROCKER_REPLACED)
              .mustBeNew(
                  WARN,
                  HERE,
                  Set.of(PartKind.PIVOT),
                  "Rocker and pivot are a pair: a new rocker takes a new pivot.")
              .first("ratio", HERE, ROCKERS, "Check that the new rocker has the same ratio.")
              .first("oil-hole", HERE, ROCKERS, "Check the rocker's oil hole.")
              .after("tip-sweep", "Check the sweep of the rocker over the valve tip.")
              .leadsTo(ChangeKind.GEOMETRY_CHANGED),
          Rule.of(
                  "R11",
                  "Valvetrain geometry changed",
                  ChangeKind.GEOMETRY_CHANGED,
                  ChangeKind.GASKET_THICKNESS)
              .source("worked out from the geometry; verify with a checking pushrod")
              .first(
                  "pushrod-length",
                  HERE,
                  PUSHRODS,
                  "Check the pushrod length with a checking pushrod.")
              .after("preload", "Set preload or lash anew.")
              .after("sweep", "Check the sweep of the rockers over the valve tips."),
          Rule.of("R12", "Valve job", ChangeKind.VALVE_JOB)
              .source(Sources.TM_289)
              .buy("stem-seals", Count.PER_VALVE, "valve stem seals")
              .first(
                  "installed-height", BANK, SPRINGS, "Measure installed height; shim the springs.")
              .first("tip-height", BANK, VALVES, "Check the height of the valve tips.")
              .first("margin", BANK, VALVES, "Check the valve margins.")
              .after("chamber", "Measure the chambers anew in cc.")
              .leadsTo(ChangeKind.GEOMETRY_CHANGED),
          Rule.of("R13", "New valve", ChangeKind.VALVE_REPLACED)
              .first("guide", HERE, VALVES, "Measure the clearance of the new valve in its guide.")
              .first("seat", HERE, VALVES, "Lap or grind that seat to the new valve.")
              .know(
                  "record",
                  WARN,
                  HERE,
                  VALVES,
                  "The place's record starts anew with the new valve.")
              .leadsTo(ChangeKind.GEOMETRY_CHANGED),
          Rule.of("R25", "Bent pushrod", ChangeKind.PUSHROD_BENT)
              .mustBeNew(BLOCK, HERE, PUSHRODS, "A bent pushrod is never straightened: new rod.")
              .first("lifter", HERE, Set.of(PartKind.LIFTER), "Look at the lifter under it.")
              .first("rocker-and-stud", HERE, ROCKERS, "Look at its rocker and stud.")
              .first("stem-and-tip", HERE, VALVES, "Look at the valve's stem, tip and guide.")
              .after("piston-mark", "Look for a valve's mark on the piston; is a guide sticking?"),
          Rule.of("R26", "Rocker stud has moved", ChangeKind.STUD_MOVED)
              .source(Sources.OVERHAUL_ARTICLE)
              .know(
                  "repair",
                  WARN,
                  HERE,
                  ROCKERS,
                  "A pressed stud that has moved: oversize stud, or ream and tap for a screwed"
                      + " one.")
              .first("stud", HERE, ROCKERS, "See that the stud is repaired.")
              .first("all-studs", BANK, ROCKERS, "Measure every other stud of the head."));

  private ValvetrainRules() {}
}
