package wherefrom.rules.consequence;

/**
 * What can be changed on an engine, or found in it, that means something for the parts around it.
 * The names stand in logbooks: they never change.
 */
public enum ChangeKind {
  NEW_FLAT_CAM("new flat-tappet cam", Reach.WHOLE, Origin.WORK),
  CAM_REGROUND("cam reground", Reach.WHOLE, Origin.WORK),
  NEW_ROLLER_CAM("new roller cam", Reach.WHOLE, Origin.WORK),
  FLAT_TO_ROLLER("from flat to roller lifters", Reach.WHOLE, Origin.WORK),
  ROLLER_TO_FLAT("from roller to flat lifters", Reach.WHOLE, Origin.WORK),
  LIFT_INCREASED("more valve lift", Reach.WHOLE, Origin.WORK),
  HEAD_MILLED("head milled", Reach.BANK, Origin.WORK),
  DECK_MILLED("deck milled", Reach.BANK, Origin.WORK),
  GASKET_THICKNESS("head gasket of another thickness", Reach.WHOLE, Origin.WORK),
  VALVE_JOB("valve job: seats or faces ground", Reach.BANK, Origin.WORK),
  ROD_JOURNALS_GROUND("rod journals ground", Reach.WHOLE, Origin.WORK),
  MAIN_JOURNALS_GROUND("main journals ground", Reach.WHOLE, Origin.WORK),
  CRANK_POLISHED("crank polished", Reach.WHOLE, Origin.WORK),
  BORED("bored", Reach.CYLINDER, Origin.WORK),
  HONED("honed only", Reach.CYLINDER, Origin.WORK),
  ROD_RESIZED("rod resized, or its bolts replaced", Reach.CYLINDER, Origin.WORK),
  LINE_HONED("mains line-honed", Reach.WHOLE, Origin.WORK),
  HOT_TANKED("block hot-tanked", Reach.WHOLE, Origin.WORK),
  SPRINGS_CHANGED("other valve springs", Reach.WHOLE, Origin.WORK),
  SPRINGS_SHIMMED("springs set to another height", Reach.WHOLE, Origin.WORK),
  CRANK_CHANGED("another crank", Reach.WHOLE, Origin.WORK),
  PISTONS_CHANGED("other pistons", Reach.WHOLE, Origin.WORK),
  ROCKER_RATIO("rockers of another ratio", Reach.WHOLE, Origin.WORK),
  LARGER_VALVES("larger valves, intake and exhaust", Reach.BANK, Origin.WORK),
  LARGER_INTAKE_VALVES("larger intake valves", Reach.BANK, Origin.WORK),
  LARGER_EXHAUST_VALVES("larger exhaust valves", Reach.BANK, Origin.WORK),
  STUDS_SCREW_IN("rocker studs changed to screw-in", Reach.BANK, Origin.WORK),

  LIFTER_REUSED("used lifter goes back", Reach.VALVE, Origin.FOLLOWS),
  LIFTER_REPLACED("new lifter on the used cam", Reach.VALVE, Origin.FOLLOWS),
  PUSHROD_REPLACED("new pushrod", Reach.VALVE, Origin.FOLLOWS),
  ROCKER_REPLACED("new rocker", Reach.VALVE, Origin.FOLLOWS),
  VALVE_REPLACED("new valve", Reach.VALVE, Origin.FOLLOWS),
  ROD_REPLACED("new rod with its cap", Reach.ROD_OR_MAIN, Origin.FOLLOWS),
  CAP_REPLACED("cap of another housing", Reach.ROD_OR_MAIN, Origin.FOLLOWS),
  SWAPPED("part fitted at another place", Reach.PLACE, Origin.FOLLOWS),
  TAKEN_APART("engine taken apart", Reach.WHOLE, Origin.FOLLOWS),
  GEOMETRY_CHANGED("valvetrain geometry changed", Reach.PLACE, Origin.FOLLOWS),
  DEBRIS_LOOSE("debris in the oil", Reach.WHOLE, Origin.FOLLOWS),

  LOBE_FAILED("cam lobe failed", Reach.VALVE, Origin.FINDING),
  FOOT_WORN("foot of a lifter worn", Reach.VALVE, Origin.FINDING),
  ROLLER_WORN("roller of a lifter worn", Reach.VALVE, Origin.FINDING),
  BEARING_FAILED("rod or main bearing failed", Reach.ROD_OR_MAIN, Origin.FINDING),
  CAP_LOST("cap lost or mixed up", Reach.ROD_OR_MAIN, Origin.FINDING),
  PLASTIC_GEAR_BROKEN("plastic cam gear broken", Reach.WHOLE, Origin.FINDING),
  PLASTIC_GEAR_OLD("plastic cam gear, still whole", Reach.WHOLE, Origin.FINDING),
  PUSHROD_BENT("pushrod bent", Reach.VALVE, Origin.FINDING),
  STUD_MOVED("rocker stud has moved", Reach.VALVE, Origin.FINDING),
  SLOT_UNKNOWN("slot unknown", Reach.PLACE, Origin.FINDING);

  /** How a change comes to be. */
  public enum Origin {
    /** Work that the person plans and has done. */
    WORK,
    /** Something that was found. */
    FINDING,
    /** Follows from other entries or changes; nobody plans it by itself. */
    FOLLOWS
  }

  private final String words;
  private final Reach reach;
  private final Origin origin;

  ChangeKind(String words, Reach reach, Origin origin) {
    this.words = words;
    this.reach = reach;
    this.origin = origin;
  }

  public String words() {
    return words;
  }

  public Reach reach() {
    return reach;
  }

  public Origin origin() {
    return origin;
  }

  /** Whether such an engine can have it at all. */
  public boolean isOffered(Setting setting) {
    return switch (this) {
      case FLAT_TO_ROLLER -> setting.isFlat();
      case ROLLER_TO_FLAT -> setting.isRoller();
      case STUDS_SCREW_IN -> setting.isStudded();
      default -> true;
    };
  }
}
