package wherefrom.rules.consequence;

import static wherefrom.rules.consequence.ChangeKind.CAM_REGROUND;
import static wherefrom.rules.consequence.ChangeKind.FLAT_TO_ROLLER;
import static wherefrom.rules.consequence.ChangeKind.GEOMETRY_CHANGED;
import static wherefrom.rules.consequence.ChangeKind.NEW_FLAT_CAM;
import static wherefrom.rules.consequence.ChangeKind.NEW_ROLLER_CAM;
import static wherefrom.rules.consequence.ChangeKind.ROLLER_TO_FLAT;
import static wherefrom.rules.consequence.PlaceScope.ALL;
import static wherefrom.rules.consequence.Severity.BLOCK;
import static wherefrom.rules.consequence.Severity.WARN;

import java.util.List;
import java.util.Set;
import wherefrom.inspection.Sources;
import wherefrom.parts.PartKind;

/** Another cam, and what runs on it. */
final class CamRules {
  private static final Set<PartKind> LIFTERS = Set.of(PartKind.LIFTER);
  private static final Set<PartKind> PUSHRODS = Set.of(PartKind.PUSHROD);
  private static final Set<PartKind> SPRINGS = Set.of(PartKind.SPRING);

  static final List<Rule> ROWS =
      List.of(
          Rule.of("R1", "New or reground flat-tappet cam", NEW_FLAT_CAM, CAM_REGROUND)
              .only(Setting::isFlat)
              .mustBeNew(
                  BLOCK,
                  ALL,
                  LIFTERS,
                  "Never run a used flat lifter on a new or reground cam. It has worn in to its"
                      + " own lobe. All lifters must be new, two for each cylinder.")
              .from(Sources.CAM_TIP)
              .first(
                  "spring-load",
                  ALL,
                  SPRINGS,
                  "Check the spring load against the cam card, for break-in and after.")
              .first(
                  "pushrod-ends",
                  ALL,
                  PUSHRODS,
                  "Look at the lower end of each old pushrod. A worn ball ruins a new lifter.")
              .after("break-in", "Plan the break-in of cam and lifters: paste, oil, first start.")
              .leadsTo(GEOMETRY_CHANGED),
          Rule.of("R6", "New cam", NEW_FLAT_CAM, NEW_ROLLER_CAM, FLAT_TO_ROLLER, ROLLER_TO_FLAT)
              .know(
                  "bearings",
                  WARN,
                  ALL,
                  Set.of(PartKind.CAM_BEARING),
                  "One manual calls for new cam bearings with a new cam. Check yours.")
              .from(Sources.TM_673)
              .after("end-play", "Check the cam's end play.")
              .after("drive", "Check cam gear and chain."),
          Rule.of("R7", "Roller cam where the lifters are flat", NEW_ROLLER_CAM)
              .only(Setting::isFlat)
              .know(
                  "conversion",
                  WARN,
                  ALL,
                  LIFTERS,
                  "This engine's lifters are flat. A flat lifter must never run on a roller"
                      + " cam. This is the change from flat to roller lifters.")
              .leadsTo(FLAT_TO_ROLLER),
          Rule.of("R7", "From flat to roller lifters", FLAT_TO_ROLLER)
              .buy("cam", Count.ONE, Goods.CAM)
              .ofSort(Goods.ROLLER_CAM)
              .mustBeNew(
                  BLOCK,
                  ALL,
                  LIFTERS,
                  "A roller cam takes roller lifters. Never run flat lifters on it.")
              .ofSort(Goods.ROLLER_LIFTERS)
              .mustBeNew(
                  "shorter",
                  BLOCK,
                  ALL,
                  PUSHRODS,
                  "Fit new pushrods, usually shorter. Measure with a checking pushrod before you"
                      + " buy.")
              .because(Renewal.SORT)
              .first("springs", ALL, SPRINGS, "Check that the springs suit the roller cam.")
              .after("distributor-gear", "Check that the distributor gear suits the cam's steel.")
              .after("thrust-button", "Check what holds the cam from walking: plate or button.")
              .after("guides", "Check the guides that keep the lifters from turning.")
              .after(
                  "lifter-bores",
                  "Try one roller lifter over its travel: its oil band stays in the bore.")
              .leadsTo(GEOMETRY_CHANGED),
          Rule.of("R34", "Flat-tappet cam where the lifters are rollers", NEW_FLAT_CAM)
              .only(Setting::isRoller)
              .know(
                  "conversion",
                  WARN,
                  ALL,
                  LIFTERS,
                  "This engine has roller lifters. A roller must never run on a flat-tappet"
                      + " cam. This is the change to flat lifters.")
              .leadsTo(ROLLER_TO_FLAT),
          Rule.of("R34", "From roller to flat lifters", ROLLER_TO_FLAT)
              .buy("cam", Count.ONE, Goods.CAM)
              .mustBeNew(
                  BLOCK,
                  ALL,
                  LIFTERS,
                  "A flat-tappet cam takes flat lifters. Never run roller lifters on it.")
              .ofSort(Goods.FLAT_LIFTERS)
              .mustBeNew(
                  "longer",
                  BLOCK,
                  ALL,
                  PUSHRODS,
                  "Fit new pushrods, usually longer. Measure with a checking pushrod before you"
                      + " buy.")
              .because(Renewal.SORT)
              .first(
                  "lifter-bores",
                  ALL,
                  LIFTERS,
                  "Check that flat lifters fit these bores, turn, and get oil.")
              .first(
                  "spring-load",
                  ALL,
                  SPRINGS,
                  "Check the spring load. A flat lobe takes less than a roller lobe.")
              .after("distributor-gear", "Check that the distributor gear suits the cam's steel.")
              .after("break-in", "Plan the break-in of cam and lifters: paste, oil, first start.")
              .leadsTo(GEOMETRY_CHANGED),
          Rule.of("R35", "New flat-tappet cam", NEW_FLAT_CAM)
              .only(Setting::isFlat)
              .buy("cam", Count.ONE, Goods.CAM),
          Rule.of("R35", "Cam reground", CAM_REGROUND)
              .work("cam-work", Count.ONE, Goods.CAM)
              .ofSort(Goods.CAM_REGROUND),
          Rule.of(
                  "R35",
                  "Another cam: its lift or duration may be up",
                  NEW_FLAT_CAM,
                  CAM_REGROUND,
                  NEW_ROLLER_CAM,
                  FLAT_TO_ROLLER,
                  ROLLER_TO_FLAT)
              .first(
                  "coil-bind",
                  ALL,
                  SPRINGS,
                  "Check the springs for coil bind at the lift of this cam.")
              .first(
                  "retainer-seal",
                  ALL,
                  SPRINGS,
                  "Check retainer to seal and to guide top at this cam's lift.")
              .after(
                  "studs",
                  "Lift up: lay a straightedge over press-in rocker studs, before and after."
                      + " Judge them against the open spring load. See that each rocker's slot is"
                      + " long enough.")
              .perhaps(Count.PER_VALVE, Goods.SCREW_IN_STUDS)
              .onlyFor(Setting::isStudded)
              .after("piston-valve", "Another cam or cam position: check piston to valve, always.")
              .after("degree", "Degree the cam. Check it against its card with wheel and dial."),
          Rule.of("R36", "Another cam for roller lifters", NEW_ROLLER_CAM)
              .only(Setting::isRoller)
              .buy("roller-cam", Count.ONE, Goods.CAM)
              .ofSort(Goods.ROLLER_CAM)
              .first("springs", ALL, SPRINGS, "Check that the springs suit the new cam.")
              .after("distributor-gear", "Check that the distributor gear suits the cam's steel.")
              .after("thrust-button", "Check what holds the cam from walking: plate or button.")
              .leadsTo(GEOMETRY_CHANGED),
          Rule.of("R36", "Used roller lifters on another cam", NEW_ROLLER_CAM, CAM_REGROUND)
              .only(Setting::isRoller)
              .first(
                  "roller-condition",
                  ALL,
                  LIFTERS,
                  "Turn each roller. Only a perfect one may run on another cam.")
              .from(Sources.ROLLER_GUIDE)
              .after(
                  "base-circle",
                  "Check the base circle: lifter travel, its oil band, and its guide.")
              .leadsTo(GEOMETRY_CHANGED));

  private CamRules() {}
}
