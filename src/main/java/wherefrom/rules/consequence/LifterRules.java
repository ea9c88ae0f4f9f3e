package wherefrom.rules.consequence;

import static wherefrom.rules.consequence.ChangeKind.FOOT_WORN;
import static wherefrom.rules.consequence.ChangeKind.GEOMETRY_CHANGED;
import static wherefrom.rules.consequence.ChangeKind.LIFTER_REPLACED;
import static wherefrom.rules.consequence.ChangeKind.LIFTER_REUSED;
import static wherefrom.rules.consequence.ChangeKind.LOBE_FAILED;
import static wherefrom.rules.consequence.ChangeKind.ROLLER_WORN;
import static wherefrom.rules.consequence.ChangeKind.SLOT_UNKNOWN;
import static wherefrom.rules.consequence.PlaceScope.ALL;
import static wherefrom.rules.consequence.PlaceScope.HERE;
import static wherefrom.rules.consequence.PlaceScope.MATES;
import static wherefrom.rules.consequence.PlaceScope.SELF;
import static wherefrom.rules.consequence.Severity.BLOCK;
import static wherefrom.rules.consequence.Severity.WARN;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wherefrom.inspection.Sources;
import wherefrom.parts.PartKind;

/** Lifters on the cam that is in, and lobes that failed. */
final class LifterRules {
  private static final Set<PartKind> LIFTERS = Set.of(PartKind.LIFTER);

  private static final String NEW_MATE =
      "Nobody knows where it came from. Check it as a new mate of what it runs on.";

  static final List<Rule> ROWS =
      List.of(
          Rule.of("R2", "Used flat lifter on its own cam", LIFTER_REUSED)
              .only(Setting::isFlat)
              .know(
                  "same-lobe",
                  BLOCK,
                  HERE,
                  LIFTERS,
                  "A used flat lifter goes back on its own lobe only.")
              .from(Sources.OVERHAUL_MANUAL)
              .later(
                  KnownCheck.LIFTER_CROWN.id(),
                  HERE,
                  LIFTERS,
                  "See that the foot is still domed. Two feet held together rock, or measure"
                      + " the crown.")
              .from(Sources.OVERHAUL_MANUAL)
              .after("spin", "See that the lifter spins when the engine is turned."),
          Rule.of("R2", "Foot of a flat lifter worn", FOOT_WORN)
              .only(Setting::isFlat)
              .mustBeNew(
                  BLOCK,
                  HERE,
                  LIFTERS,
                  "The foot of this flat lifter is worn. It would wear down any lobe. It must"
                      + " be new.")
              .from(Sources.OVERHAUL_MANUAL)
              .after("worn-foot-lobe", "Look at the lobe that the worn lifter ran on."),
          Rule.of("R2", "Roller of a lifter worn", ROLLER_WORN)
              .only(Setting::isRoller)
              .mustBeNew(
                  "roller-new",
                  BLOCK,
                  HERE,
                  LIFTERS,
                  "The roller of this lifter is worn. It would ruin any lobe. It must be new.")
              .after("worn-roller-lobe", "Look at the lobe that the worn roller ran on.")
              .leadsTo(ChangeKind.DEBRIS_LOOSE),
          Rule.of("R3", "Slot of a flat lifter unknown", SLOT_UNKNOWN)
              .only(Setting::isFlat)
              .forbid(
                  "machinist",
                  SELF,
                  LIFTERS,
                  "Nobody knows which lobe this flat lifter ran on. It cannot be used again."
                      + " Buy lifters and cam, or have a machinist inspect both."),
          Rule.of("R3", "Slot of another part unknown", SLOT_UNKNOWN)
              .first(
                  "as-new-mate", SELF, EnumSet.complementOf(EnumSet.of(PartKind.LIFTER)), NEW_MATE)
              .first("as-new-roller", SELF, LIFTERS, NEW_MATE)
              .onlyFor(Setting::isRoller)
              .know(
                  "mates",
                  WARN,
                  MATES,
                  PartKind.all(),
                  "This part runs with a part of unknown place. The two may not be worn in to"
                      + " each other."),
          Rule.of("R4", "New lifter on the used cam", LIFTER_REPLACED)
              .brings(PartKind.LIFTER, HERE)
              .know(
                  "used-lobe",
                  WARN,
                  HERE,
                  LIFTERS,
                  "A new flat lifter wants a lobe with taper and full lift.")
              .onlyFor(Setting::isFlat)
              .know(
                  "used-lobe-roller",
                  WARN,
                  HERE,
                  LIFTERS,
                  "A new roller lifter wants a smooth lobe with full lift.")
              .onlyFor(Setting::isRoller)
              .first("lobe-lift", HERE, LIFTERS, "Measure the lift of every lobe first.")
              .first(
                  "pushrod-ends",
                  HERE,
                  Set.of(PartKind.PUSHROD),
                  "Look at the old pushrod's lower end. A worn ball ruins a new lifter.")
              .after("break-in", "Run the new flat lifter in: paste, oil, first start.")
              .onlyFor(Setting::isFlat)
              .leadsTo(GEOMETRY_CHANGED),
          Rule.of("R5", "Cam lobe failed", LOBE_FAILED)
              .mustBeNew(
                  BLOCK, ALL, LIFTERS, "A lobe has failed. Replace cam and lifters together.")
              .buy("cam", PlaceScope.ALL, Count.ONE, Goods.CAM)
              .first("lifter-bores", ALL, LIFTERS, "Look at every lifter bore first.")
              .know(
                  "which-cam",
                  WARN,
                  ALL,
                  LIFTERS,
                  "Say under Changes which cam goes in. Springs, break-in and degrees follow.")
              .leadsTo(ChangeKind.DEBRIS_LOOSE));

  private LifterRules() {}
}
