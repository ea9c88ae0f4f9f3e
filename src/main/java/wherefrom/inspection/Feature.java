package wherefrom.inspection;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.Bank;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.CamBearingSpot;
import wherefrom.engine.Layout;
import wherefrom.engine.RockerMount;
import wherefrom.engine.Spots;
import wherefrom.engine.ValveSpot;

/** What is looked at and measured on the large castings and shafts, and carries no tag. */
public enum Feature {
  LOBE("cam lobe", Reach.VALVE),
  STUD("rocker stud", Reach.VALVE),
  LIFTER_BORE("lifter bore", Reach.VALVE),
  VALVE_SEAT("valve seat and guide", Reach.VALVE),
  ROCKER_SHAFT("rocker shaft", Reach.VALVE),
  BORE("cylinder bore", Reach.CYLINDER),
  RINGS("piston rings", Reach.CYLINDER),
  ROD_JOURNAL("rod journal", Reach.CYLINDER),
  ROD_HOUSING("big-end housing", Reach.CYLINDER),
  MAIN_JOURNAL("main journal", Reach.MAIN),
  MAIN_HOUSING("main housing", Reach.MAIN),
  CAM_JOURNAL("cam journal", Reach.CAM_BEARING),
  HEAD("cylinder head face", Reach.BANK),
  DECK("block deck", Reach.BANK),
  TIMING("timing drive", Reach.WHOLE),
  CRANK("crankshaft", Reach.WHOLE),
  CAMSHAFT("camshaft", Reach.WHOLE),
  OIL("oil and filter", Reach.WHOLE),
  OIL_PUMP("oil pump", Reach.WHOLE),
  FLYWHEEL("flywheel", Reach.WHOLE),
  DAMPER("damper", Reach.WHOLE),
  CORE_PLUGS("core plugs", Reach.BANK),
  VALVE_TIP("valve tip and lash", Reach.VALVE),
  BLOCK("block", Reach.WHOLE),
  CHAMBER("chamber and plug hole", Reach.CYLINDER),
  COMPRESSION("compression", Reach.CYLINDER),
  RUNNING("running engine", Reach.WHOLE),
  OUTSIDE("hoses, wires and brackets", Reach.WHOLE);

  /** What can be read and looked at only while the engine is together. */
  private static final Set<Feature> BEFORE_TEARDOWN = EnumSet.of(COMPRESSION, RUNNING, OUTSIDE);

  /** How many there are of it. */
  public enum Reach {
    VALVE,
    CYLINDER,
    MAIN,
    CAM_BEARING,
    BANK,
    WHOLE
  }

  private final String word;
  private final Reach reach;
  private final String key;

  Feature(String word, Reach reach) {
    this.word = word;
    this.reach = reach;
    this.key = name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public String word() {
    return word;
  }

  /** The same of several places: {@code cam lobes}. */
  public String plural() {
    return switch (this) {
      case RINGS, CORE_PLUGS, COMPRESSION -> word;
      case VALVE_SEAT -> "valve seats and guides";
      case VALVE_TIP -> "valve tips and lash";
      case CHAMBER -> "chambers and plug holes";
      default -> reach == Reach.WHOLE ? word : word + "s";
    };
  }

  public Reach reach() {
    return reach;
  }

  /** Whether its looks are due while the parts lie on the bench. */
  public boolean isDueOnTheBench() {
    return !isBeforeTeardown() && this != VALVE_TIP;
  }

  /** Whether it is a casting that is decided about, and carries no tag. */
  public boolean isCasting() {
    return this == BLOCK || this == HEAD;
  }

  /** Whether it can be read only before the engine comes apart. */
  public boolean isBeforeTeardown() {
    return BEFORE_TEARDOWN.contains(this);
  }

  /** The name in files, such as {@code main-journal}. Never changes. */
  public String key() {
    return key;
  }

  public static Optional<Feature> find(String key) {
    return Arrays.stream(values()).filter(feature -> feature.key().equals(key)).findFirst();
  }

  /** Where the engine has one: {@code 3EX}, {@code B3}, {@code M2}, a bank's name, or empty. */
  public List<String> where(Layout layout) {
    if (this == ROCKER_SHAFT && layout.rockers() != RockerMount.SHAFT) {
      return List.of();
    }
    if (this == STUD && layout.rockers() == RockerMount.SHAFT) {
      return List.of();
    }
    return switch (reach) {
      case VALVE -> Spots.valves(layout).stream().map(ValveSpot::key).toList();
      case CYLINDER -> Spots.bores(layout).stream().map(BoreSpot::key).toList();
      case MAIN -> numbers(layout.mains());
      case CAM_BEARING -> Spots.camBearings(layout).stream().map(CamBearingSpot::key).toList();
      case BANK -> layout.banks().stream().map(Bank::name).toList();
      case WHOLE -> List.of("");
    };
  }

  private static List<String> numbers(int mains) {
    return java.util.stream.IntStream.rangeClosed(1, mains).mapToObj(at -> "M" + at).toList();
  }
}
