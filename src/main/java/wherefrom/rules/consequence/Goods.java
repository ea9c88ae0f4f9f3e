package wherefrom.rules.consequence;

import java.util.Arrays;
import java.util.Optional;
import wherefrom.parts.PartKind;

/**
 * What costs money: parts that carry a tag, things that carry none, and work. The id stands in
 * logbooks, as prices are noted under it, and never changes; the words are for people and may.
 */
public enum Goods {
  ROCKERS("rockers", PartKind.ROCKER),
  PIVOTS("pivots", PartKind.PIVOT),
  PUSHRODS("pushrods", PartKind.PUSHROD),
  LIFTERS("lifters", PartKind.LIFTER),
  KEEPER_PAIRS("keeper pairs", PartKind.KEEPERS),
  RETAINERS("retainers", PartKind.RETAINER),
  VALVE_SPRINGS("valve springs", PartKind.SPRING),
  VALVES("valves", PartKind.VALVE),
  ROD_CAPS("rod caps", PartKind.ROD_CAP),
  ROD_SHELLS("rod shells", PartKind.ROD_SHELL),
  RODS("rods", PartKind.ROD),
  PISTONS("pistons", PartKind.PISTON),
  MAIN_CAPS("main caps", PartKind.MAIN_CAP),
  MAIN_SHELLS("main shells", PartKind.MAIN_SHELL),
  CAM_BEARINGS("cam bearings", PartKind.CAM_BEARING),
  RING_SETS("piston ring sets"),
  GASKET_SET("gasket set"),
  SEALS("seals"),
  STRETCH_BOLTS("bolts that are tightened by angle, where there are any"),
  PLUGS("core plugs and gallery plugs"),
  CAM("cam"),
  CRANK("crank"),
  CHAIN_AND_GEARS("timing chain with both gears"),
  HEAD_GASKETS("head gaskets"),
  STEM_SEALS("valve stem seals"),
  STUDS("rocker studs"),
  SCREW_IN_STUDS("screw-in rocker studs"),
  BORING("bored"),
  HONING("honed only"),
  TANKING("block hot-tanked"),
  POLISHING("crank polished"),
  RESIZING("rod resized, or its bolts replaced"),
  LINE_HONING("mains line-honed"),
  ROD_GRINDING("rod journals ground"),
  MAIN_GRINDING("main journals ground"),
  HEAD_MILLING("head milled"),
  DECK_MILLING("deck milled"),
  VALVE_JOB("valve job: seats or faces ground"),
  HOUSING("main housing machined for another cap"),
  INTAKE_CUT("intake faces or manifold cut"),
  SEATS_CUT("seats and throats cut for larger valves"),
  STUD_WORK("rocker stud bores reamed or tapped"),
  STUD_TAPPING("head machined for screw-in studs");

  private final String id;
  private final Optional<PartKind> kind;

  Goods(String id) {
    this.id = id;
    this.kind = Optional.empty();
  }

  Goods(String id, PartKind kind) {
    this.id = id;
    this.kind = Optional.of(kind);
  }

  /** As it stands in logbooks. */
  public String id() {
    return id;
  }

  /** As it is shown. */
  public String words() {
    return id;
  }

  /** Whether it is a kind of part that carries a tag. */
  public boolean isPart() {
    return kind.isPresent();
  }

  public static Goods of(PartKind kind) {
    return Arrays.stream(values())
        .filter(one -> one.kind.equals(Optional.of(kind)))
        .findFirst()
        .orElseThrow();
  }
}
