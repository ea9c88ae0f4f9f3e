package wherefrom.rules.consequence;

import static wherefrom.rules.consequence.PlaceScope.ALL;
import static wherefrom.rules.consequence.PlaceScope.BANK;
import static wherefrom.rules.consequence.PlaceScope.HERE;
import static wherefrom.rules.consequence.Severity.BLOCK;
import static wherefrom.rules.consequence.Severity.WARN;

import java.util.List;
import java.util.Set;
import wherefrom.inspection.Sources;
import wherefrom.parts.PartKind;

/** Pushrods, rockers and their studs. */
final class ValvetrainRules {
  private static final Set<PartKind> PUSHRODS = Set.of(PartKind.PUSHROD);
  private static final Set<PartKind> ROCKERS = Set.of(PartKind.ROCKER);
  private static final Set<PartKind> PIVOTS = Set.of(PartKind.PIVOT);
  private static final Set<PartKind> VALVES = Set.of(PartKind.VALVE);
  private static final Set<PartKind> SPRINGS = Set.of(PartKind.SPRING);

  static final List<Rule> ROWS =
      List.of(
          Rule.of("R8", "New pushrod", ChangeKind.PUSHROD_REPLACED)
              .brings(PartKind.PUSHROD, HERE)
              .know(
                  "worn-mate",
                  WARN,
                  HERE,
                  Set.of(PartKind.PUSHROD, PartKind.ROCKER),
                  "Do not pair a worn ball with a new socket. Nor a new ball with a worn one.")
              .from(Sources.TM_225)
              .first("both-ends", HERE, PUSHRODS, "Look at both of its mates: rocker and lifter."),
          Rule.of("R9", "More valve lift", ChangeKind.LIFT_INCREASED)
              .first("coil-bind", ALL, SPRINGS, "Check the springs for coil bind at full lift.")
              .first("retainer-seal", ALL, SPRINGS, "Check the gap from retainer to seal.")
              .first(
                  "guide-top",
                  ALL,
                  SPRINGS,
                  "Check that the retainer clears the guide's top at full lift.")
              .first("rocker-slot", ALL, ROCKERS, "Check that the rocker's slot is long enough.")
              .onlyFor(Setting::isStudded)
              .first(
                  "studs",
                  ALL,
                  ROCKERS,
                  "Press-in studs? Lay a straightedge over them before fitting. Judge them"
                      + " against the open spring load. Have them pinned or changed to screw-in.")
              .perhaps(Count.PER_VALVE, Goods.SCREW_IN_STUDS)
              .onlyFor(Setting::isStudded)
              .after(
                  "studs-after",
                  "Lay a straightedge over the rocker studs again. None may have risen.")
              .onlyFor(Setting::isStudded)
              .after("piston-valve", "Check the clearance from piston to valve with clay or dial."),
          Rule.of("R10", "New rocker", ChangeKind.ROCKER_REPLACED)
              .brings(PartKind.ROCKER, HERE)
              .mustBeNew(
                  WARN,
                  HERE,
                  PIVOTS,
                  "Rocker and pivot are a pair. A new rocker takes a new pivot.")
              .onlyFor(Setting::isStudded)
              .after("bushing", "Measure the new rocker's bushing and the shaft.")
              .onlyFor(setting -> !setting.isStudded())
              .first("ratio", HERE, ROCKERS, "Check that the new rocker has the same ratio.")
              .first("oil-hole", HERE, ROCKERS, "Check the rocker's oil hole.")
              .first(
                  "pushrod-ends",
                  HERE,
                  PUSHRODS,
                  "Look at the old pushrod's upper end. A worn ball ruins a new rocker.")
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
              .after("preload", "Set preload or lash again.")
              .after("sweep", "Check the sweep of the rockers over the valve tips."),
          Rule.of("R25", "Bent pushrod", ChangeKind.PUSHROD_BENT)
              .mustBeNew(
                  BLOCK, HERE, PUSHRODS, "Never straighten a bent pushrod. Fit a new pushrod.")
              .first("lifter", HERE, Set.of(PartKind.LIFTER), "Look at the lifter under it.")
              .first("rocker-and-stud", HERE, ROCKERS, "Look at its rocker and stud.")
              .first("stem-and-tip", HERE, VALVES, "Look at the valve's stem, tip and guide.")
              .after("piston-mark", "Look for a valve's mark on the piston; is a guide sticking?"),
          Rule.of("R26", "Rocker stud has moved", ChangeKind.STUD_MOVED)
              .know(
                  "repair",
                  WARN,
                  HERE,
                  ROCKERS,
                  "A pressed-in stud has moved. Ream the hole and press in an oversize stud."
                      + " Or have it tapped for a screw-in stud.")
              .from(Sources.OVERHAUL_MANUAL)
              .buy("new-stud", Count.PER_VALVE, Goods.STUDS)
              .work("stud-work", Count.PER_VALVE, Goods.STUD_WORK)
              .first("stud", HERE, ROCKERS, "See that the stud is repaired.")
              .first("all-studs", BANK, ROCKERS, "Measure all the other studs of the head.")
              .perhaps(Count.PER_VALVE, Goods.STUDS),
          Rule.of("R37", "Rockers of another ratio", ChangeKind.ROCKER_RATIO)
              .mustBeNew(
                  "rockers",
                  BLOCK,
                  ALL,
                  ROCKERS,
                  "All rockers have the other ratio. Mix in no old one.")
              .because(Renewal.SORT)
              .mustBeNew(
                  "pivots",
                  WARN,
                  ALL,
                  PIVOTS,
                  "Rocker and pivot are a pair. New rockers take new pivots.")
              .onlyFor(Setting::isStudded)
              .first(
                  "true-ratio",
                  ALL,
                  ROCKERS,
                  "Measure a new rocker's true ratio: valve lift divided by lobe lift."
                      + " A hydraulic lifter bleeds down. Measure on a solid one.")
              .first(
                  "pushrod-hole",
                  ALL,
                  PUSHRODS,
                  "See that each pushrod clears its hole or guide plate. It leans differently"
                      + " now.")
              .first(
                  "pushrod-ends",
                  ALL,
                  PUSHRODS,
                  "Look at the old pushrods' upper ends. A worn ball ruins a new rocker.")
              .after("cover", "See that rockers and nuts clear the rocker covers.")
              .leadsTo(ChangeKind.LIFT_INCREASED)
              .leadsTo(ChangeKind.GEOMETRY_CHANGED),
          Rule.of("R39", "Rocker studs changed to screw-in", ChangeKind.STUDS_SCREW_IN)
              .only(Setting::isStudded)
              .buy("studs", Count.PER_VALVE, Goods.SCREW_IN_STUDS)
              .work("tapping", Count.PER_BANK, Goods.STUD_TAPPING)
              .first(
                  "boss",
                  BANK,
                  ROCKERS,
                  "See that every boss is cut square and to one depth. See that its thread is"
                      + " whole.")
              .first(
                  "stud-heights",
                  BANK,
                  ROCKERS,
                  "Lay a straightedge over the new studs. All must stand alike.")
              .first(
                  "guide-plates",
                  BANK,
                  PUSHRODS,
                  "Guide plates under the studs? Then only hardened pushrods may rub on them.")
              .after(
                  "rail-rockers",
                  "Rockers with rails on the valve tip never run with guide plates.")
              .after("sealer", "Seal every stud that ends in a water jacket or a port.")
              .after("sweep-again", "See that each rocker stands square over its valve tip.")
              .leadsTo(ChangeKind.GEOMETRY_CHANGED));

  private ValvetrainRules() {}
}
