package wherefrom.rules.consequence;

import static wherefrom.rules.consequence.ChangeKind.CAM_REGROUND;
import static wherefrom.rules.consequence.ChangeKind.FLAT_TO_ROLLER;
import static wherefrom.rules.consequence.ChangeKind.GEOMETRY_CHANGED;
import static wherefrom.rules.consequence.ChangeKind.NEW_FLAT_CAM;
import static wherefrom.rules.consequence.ChangeKind.NEW_ROLLER_CAM;
import static wherefrom.rules.consequence.ChangeKind.ROLLER_TO_FLAT;
import static wherefrom.rules.consequence.Cover.ALL;
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
                  "A used flat lifter has worn in to its own lobe and must not run on a new or"
                      + " reground cam. All lifters must be new, two for each cylinder.")
              .from(Sources.CAM_TIP)
              .first(
                  "spring-load",
                  ALL,
                  SPRINGS,
                  "Check the spring load against the cam's card, for running in and after.")
              .first(
                  "pushrod-ends",
                  ALL,
                  PUSHRODS,
                  "Look at the lower end of each old pushrod: a worn ball spoils a new lifter.")
              .after("break-in", "Plan the break-in of cam and lifters: paste, oil, first start.")
              .leadsTo(GEOMETRY_CHANGED),
          Rule.of("R6", "New cam", NEW_FLAT_CAM, NEW_ROLLER_CAM, FLAT_TO_ROLLER, ROLLER_TO_FLAT)
              .know(
                  "bearings",
                  WARN,
                  ALL,
                  Set.of(PartKind.CAM_BEARING),
                  "One engine's manual renews the cam bearings with the cam: look in yours.")
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
                  "This engine's lifters are flat, and a flat lifter must not run on a roller cam:"
                      + " this is the change from flat to roller lifters, with all that it asks.")
              .leadsTo(FLAT_TO_ROLLER),
          Rule.of("R7", "From flat to roller lifters", FLAT_TO_ROLLER)
              .buy("cam", Count.ONE, Goods.CAM)
              .ofSort(Goods.ROLLER_CAM)
              .mustBeNew(
                  BLOCK,
                  ALL,
                  LIFTERS,
                  "A roller cam takes roller lifters: flat lifters must not run on it.")
              .ofSort(Goods.ROLLER_LIFTERS)
              .mustBeNew(
                  "shorter",
                  BLOCK,
                  ALL,
                  PUSHRODS,
                  "Roller lifters stand taller: new, shorter pushrods.")
              .because(Renewal.SORT)
              .first("springs", ALL, SPRINGS, "Check that the springs suit the roller cam.")
              .after("distributor-gear", "Check that the distributor gear suits the cam's steel.")
              .after("thrust-button", "Fit and check the cam's thrust button.")
              .after("guides", "Check the guides that keep the lifters from turning.")
              .leadsTo(GEOMETRY_CHANGED),
          Rule.of("R34", "Flat-tappet cam where the lifters are rollers", NEW_FLAT_CAM)
              .only(Setting::isRoller)
              .know(
                  "conversion",
                  WARN,
                  ALL,
                  LIFTERS,
                  "This engine has roller lifters, and a roller must not run on a flat-tappet cam:"
                      + " this is the change to flat lifters, with all that it asks.")
              .leadsTo(ROLLER_TO_FLAT),
          Rule.of("R34", "From roller to flat lifters", ROLLER_TO_FLAT)
              .buy("cam", Count.ONE, Goods.CAM)
              .mustBeNew(
                  BLOCK,
                  ALL,
                  LIFTERS,
                  "A flat-tappet cam takes flat lifters: roller lifters must not run on it.")
              .ofSort(Goods.FLAT_LIFTERS)
              .mustBeNew(
                  "longer", BLOCK, ALL, PUSHRODS, "Flat lifters stand lower: new, longer pushrods.")
              .because(Renewal.SORT)
              .first(
                  "lifter-bores",
                  ALL,
                  LIFTERS,
                  "Check that flat lifters fit these bores, and that they turn and are oiled.")
              .first(
                  "spring-load",
                  ALL,
                  SPRINGS,
                  "Check the spring load: a flat lobe bears less than a roller lobe.")
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
                  "Check the gap from retainer to seal and guide top at the lift of this cam.")
              .after(
                  "studs",
                  "Lift up: straightedge over press-in rocker studs, before and after, and against"
                      + " the open spring load; see that each rocker's slot is long enough.")
              .perhaps(Count.PER_VALVE, Goods.SCREW_IN_STUDS)
              .onlyFor(Setting::isStudded)
              .after(
                  "piston-valve",
                  "Lift or duration up: check the clearance from piston to valve with clay or"
                      + " dial.")
              .after("degree", "Degree the cam: check it against its card with wheel and dial."),
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
                  "Turn each roller: only a perfect one may serve another cam.")
              .from(Sources.ROLLER_GUIDE)
              .after(
                  "base-circle",
                  "Check the base circle: the lifter's travel, its oil band, and its guide.")
              .leadsTo(GEOMETRY_CHANGED));

  private CamRules() {}
}
