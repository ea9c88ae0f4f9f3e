package wherefrom.rules.consequence;

import static wherefrom.rules.consequence.ChangeKind.CAM_REGROUND;
import static wherefrom.rules.consequence.ChangeKind.FLAT_TO_ROLLER;
import static wherefrom.rules.consequence.ChangeKind.GEOMETRY_CHANGED;
import static wherefrom.rules.consequence.ChangeKind.LIFTER_REPLACED;
import static wherefrom.rules.consequence.ChangeKind.LIFTER_REUSED;
import static wherefrom.rules.consequence.ChangeKind.LOBE_FAILED;
import static wherefrom.rules.consequence.ChangeKind.NEW_FLAT_CAM;
import static wherefrom.rules.consequence.ChangeKind.NEW_ROLLER_CAM;
import static wherefrom.rules.consequence.ChangeKind.SLOT_UNKNOWN;
import static wherefrom.rules.consequence.Cover.ALL;
import static wherefrom.rules.consequence.Cover.HERE;
import static wherefrom.rules.consequence.Cover.MATES;
import static wherefrom.rules.consequence.Cover.SELF;
import static wherefrom.rules.consequence.Severity.BLOCK;
import static wherefrom.rules.consequence.Severity.WARN;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wherefrom.inspection.Sources;
import wherefrom.parts.PartKind;

/** Cam and lifters. */
final class CamRules {
  private static final Set<PartKind> LIFTERS = Set.of(PartKind.LIFTER);
  private static final Set<PartKind> SPRINGS = Set.of(PartKind.SPRING);

  private static final String NEW_MATE =
      "Nobody knows where it came from: check it as a new mate of what it runs with.";
  static final List<Rule> ROWS =
      List.of(
          Rule.of("R1", "New or reground flat-tappet cam", NEW_FLAT_CAM, CAM_REGROUND)
              .source(Sources.CAM_TIP)
              .mustBeNew(
                  BLOCK,
                  ALL,
                  LIFTERS,
                  "A used flat lifter has worn in to its own lobe and must not run on a new or"
                      + " reground cam. All lifters must be new, two for each cylinder.")
              .onlyFor(Setting::isFlat)
              .first(
                  "spring-load",
                  ALL,
                  SPRINGS,
                  "Check the spring load against the cam's card, for running in and after.")
              .after("break-in", "Plan the break-in of cam and lifters: paste, oil, first start.")
              .onlyFor(Setting::isFlat)
              .leadsTo(GEOMETRY_CHANGED),
          Rule.of("R2", "Used flat lifter on its own cam", LIFTER_REUSED)
              .only(Setting::isFlat)
              .source(Sources.OVERHAUL_ARTICLE)
              .know(
                  "same-lobe",
                  BLOCK,
                  HERE,
                  LIFTERS,
                  "A used flat lifter goes back to the very lobe it came from, or not at all.")
              .later(
                  "crown",
                  HERE,
                  LIFTERS,
                  "See that the foot is still domed: two feet together rock, or measure the crown.")
              .after("spin", "See that the lifter spins when the engine is turned."),
          Rule.of("R2", "Foot of a flat lifter worn", ChangeKind.FOOT_WORN)
              .only(Setting::isFlat)
              .source(Sources.OVERHAUL_ARTICLE)
              .mustBeNew(
                  BLOCK,
                  HERE,
                  LIFTERS,
                  "The foot of this flat lifter is worn: on any lobe it would wear the lobe down."
                      + " It must be new.")
              .after("worn-foot-lobe", "Look at the lobe that the worn lifter ran on."),
          Rule.of("R3", "Slot of a flat lifter unknown", SLOT_UNKNOWN)
              .only(Setting::isFlat)
              .forbid(
                  "machinist",
                  SELF,
                  LIFTERS,
                  "Nobody knows which lobe this flat lifter ran on, so it cannot be used again."
                      + " Buy the lifter set and the cam, or have a machinist inspect both."),
          Rule.of("R3", "Slot of another part unknown", SLOT_UNKNOWN)
              .first(
                  "as-new-mate", SELF, EnumSet.complementOf(EnumSet.of(PartKind.LIFTER)), NEW_MATE)
              .first("as-new-roller", SELF, LIFTERS, NEW_MATE)
              .onlyFor(setting -> !setting.isFlat())
              .know(
                  "mates",
                  WARN,
                  MATES,
                  PartKind.all(),
                  "What runs here with a part of unknown place may not be worn in to it."),
          Rule.of("R4", "New lifter on the used cam", LIFTER_REPLACED)
              .know(
                  "used-lobe",
                  WARN,
                  HERE,
                  LIFTERS,
                  "A new lifter goes on a used lobe only where the lobe's taper and lift are good.")
              .first("lobe-lift", HERE, LIFTERS, "Measure the lift of every lobe first.")
              .leadsTo(GEOMETRY_CHANGED),
          Rule.of("R5", "Cam lobe failed", LOBE_FAILED)
              .mustBeNew(BLOCK, ALL, LIFTERS, "A lobe has failed: cam and lifters go together.")
              .buy("cam", Count.ONE, "cam")
              .first("lifter-bores", ALL, LIFTERS, "Look at every lifter bore first.")
              .leadsTo(ChangeKind.DEBRIS_LOOSE),
          Rule.of("R6", "New cam", NEW_FLAT_CAM, NEW_ROLLER_CAM, FLAT_TO_ROLLER)
              .source(Sources.TM_673)
              .know(
                  "bearings",
                  WARN,
                  ALL,
                  Set.of(PartKind.CAM_BEARING),
                  "One engine's manual renews the cam bearings with the cam: look in yours.")
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
              .buy("cam", Count.ONE, "roller cam")
              .mustBeNew(
                  BLOCK,
                  ALL,
                  LIFTERS,
                  "A roller cam takes roller lifters: flat lifters must not run on it.")
              .ofSort("roller lifters")
              .mustBeNew(
                  "shorter",
                  BLOCK,
                  ALL,
                  Set.of(PartKind.PUSHROD),
                  "Roller lifters stand taller: new, shorter pushrods.")
              .because(Renewal.SORT)
              .first("springs", ALL, SPRINGS, "Check that the springs suit the roller cam.")
              .after("distributor-gear", "Check that the distributor gear suits the cam's steel.")
              .after("thrust-button", "Fit and check the cam's thrust button.")
              .after("guides", "Check the guides that keep the lifters from turning.")
              .leadsTo(GEOMETRY_CHANGED));

  private CamRules() {}
}
