package wherefrom.rules.consequence;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Predicate;
import wherefrom.engine.LifterType;
import wherefrom.parts.PartKind;
import wherefrom.text.Words;

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
  FLAT_LIFTERS("flat lifters", LifterType.FLAT),
  ROLLER_LIFTERS("roller lifters", LifterType.ROLLER),
  RING_SETS("piston ring sets"),
  OVERSIZE_RING_SETS("piston ring sets, oversize"),
  GASKET_SET("gasket set"),
  SEALS("seals"),
  STRETCH_BOLTS("bolts that are tightened by angle, where there are any"),
  PLUGS("core plugs and gallery plugs"),
  CAM("cam"),
  ROLLER_CAM("roller cam"),
  CAM_REGROUND("cam reground"),
  CRANK("crank"),
  CHAIN_AND_GEARS("timing chain with both gears", "timing set: both gears, and the chain if any"),
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
  STUD_TAPPING("head machined for screw-in studs"),
  CRANK_GROUND("crankshaft ground"),
  BORED_AND_HONED("bored and honed"),
  HEADS_REWORKED("heads reworked"),
  DISTRIBUTOR_GASKET("distributor gasket or O-ring"),
  CARBURETOR_GASKET("carburetor base gasket"),
  FUEL_PUMP_GASKET("fuel pump gasket"),
  EXHAUST_GASKET("exhaust manifold gasket"),
  INTAKE_GASKETS("intake manifold gasket set"),
  VALVE_COVER_GASKET("valve cover gasket"),
  LIFTER_COVER_GASKET("lifter cover gasket"),
  WATER_PUMP_GASKET("water pump gasket"),
  FRONT_COVER_GASKET("front cover gasket"),
  FRONT_SEAL("front crank seal"),
  CAM_PLUG("cam plug"),
  PAN_GASKETS("oil pan gasket set"),
  OIL_PUMP_GASKET("oil pump and pickup gasket or O-ring"),
  REAR_SEAL("rear main seal"),
  SPARE_PLUGS("core plug of each size"),
  SPARE_BOLTS("cover bolts and washers, each size");

  private final String id;
  private final String words;
  private final Optional<PartKind> kind;
  private final Optional<LifterType> lifters;

  Goods(String id) {
    this(id, id);
  }

  Goods(String id, String words) {
    this(id, words, Optional.empty(), Optional.empty());
  }

  Goods(String id, PartKind kind) {
    this(id, id, Optional.of(kind), Optional.empty());
  }

  Goods(String id, LifterType lifters) {
    this(id, id, Optional.empty(), Optional.of(lifters));
  }

  Goods(String id, String words, Optional<PartKind> kind, Optional<LifterType> lifters) {
    this.id = id;
    this.words = words;
    this.kind = kind;
    this.lifters = lifters;
  }

  /** As it stands in logbooks. */
  public String id() {
    return id;
  }

  /** As it is shown. */
  public String words() {
    return words;
  }

  /** {@code 1 head gasket}, {@code 3 head gaskets}; without a count where it has none. */
  String counted(int pieces) {
    return switch (this) {
      case SEALS, STRETCH_BOLTS, PLUGS -> words;
      case GASKET_SET, CAM, ROLLER_CAM, CRANK -> Words.count(pieces, words);
      case HEAD_GASKETS -> Words.count(pieces, "head gasket");
      case STEM_SEALS -> Words.count(pieces, "valve stem seal");
      case STUDS -> Words.count(pieces, "rocker stud");
      case SCREW_IN_STUDS -> Words.count(pieces, "screw-in rocker stud");
      case RING_SETS -> Words.count(pieces, "piston ring set");
      case OVERSIZE_RING_SETS -> Words.count(pieces, "piston ring set") + ", oversize";
      case FLAT_LIFTERS -> Words.count(pieces, "flat lifter");
      case ROLLER_LIFTERS -> Words.count(pieces, "roller lifter");
      case DISTRIBUTOR_GASKET,
          CARBURETOR_GASKET,
          FUEL_PUMP_GASKET,
          EXHAUST_GASKET,
          INTAKE_GASKETS,
          VALVE_COVER_GASKET,
          LIFTER_COVER_GASKET,
          WATER_PUMP_GASKET,
          FRONT_COVER_GASKET,
          FRONT_SEAL,
          CAM_PLUG,
          PAN_GASKETS,
          OIL_PUMP_GASKET,
          REAR_SEAL,
          SPARE_PLUGS,
          SPARE_BOLTS ->
          pieces == 1 ? "1 " + words : pieces + " × " + words;
      default ->
          kind.map(one -> Words.count(pieces, one.word(), one.plural()))
              .orElseGet(() -> pieces + " × " + words);
    };
  }

  /** Whether rules know how many are wanted; of the others an engine takes as many as it has. */
  boolean isCounted() {
    return this != SEALS && this != STRETCH_BOLTS && this != PLUGS;
  }

  /** The kind of part that it is, where it carries a tag. */
  public Optional<PartKind> findKind() {
    return kind;
  }

  /** The type of lifters that it is; empty where it is none, or of any type. */
  public Optional<LifterType> findLifters() {
    return lifters;
  }

  public static Optional<Goods> find(String id) {
    return first(one -> one.id.equals(id));
  }

  private static Optional<Goods> first(Predicate<Goods> wanted) {
    return Arrays.stream(values()).filter(wanted).findFirst();
  }

  /** What a person means by these words, as they are shown or stand in logbooks. */
  static Optional<Goods> read(String text) {
    return first(one -> one.id.equalsIgnoreCase(text))
        .or(() -> first(one -> one.words.equalsIgnoreCase(text)));
  }

  /** Lifters of one type. */
  public static Goods of(LifterType type) {
    return Arrays.stream(values())
        .filter(one -> one.lifters.equals(Optional.of(type)))
        .findFirst()
        .orElseThrow();
  }

  public static Goods of(PartKind kind) {
    return Arrays.stream(values())
        .filter(one -> one.kind.equals(Optional.of(kind)))
        .findFirst()
        .orElseThrow();
  }
}
