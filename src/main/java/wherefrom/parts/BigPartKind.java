package wherefrom.parts;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import wherefrom.engine.Layout;
import wherefrom.engine.RockerMount;

/**
 * The kinds of big part: what comes off an engine and has a place that nobody mistakes, so that its
 * order, its marks and its fate are kept, not its identity. They stand in the order in which they
 * usually come off (common practice, no source).
 */
public enum BigPartKind {
  DISTRIBUTOR("distributor"),
  CARBURETOR("carburetor"),
  FUEL_PUMP("fuel pump"),
  BRACKET("brackets"),
  EXHAUST("exhaust manifold"),
  INTAKE("intake manifold"),
  VALVE_COVER("valve cover"),
  ROCKER_SHAFT("rocker shaft"),
  LIFTER_COVER("lifter cover"),
  HEAD("head"),
  WATER_PUMP("water pump"),
  DAMPER("damper"),
  FRONT_COVER("front cover"),
  TIMING_SET("timing set"),
  CAMSHAFT("camshaft"),
  PAN("oil pan"),
  OIL_PUMP("oil pump"),
  FLYWHEEL("flywheel"),
  REAR_SEAL("rear seal housing"),
  CRANKSHAFT("crankshaft"),
  /** Whatever else comes off, by a word of the person's own. */
  OWN("other");

  private static final Set<BigPartKind> EACH_BANK =
      EnumSet.of(EXHAUST, VALVE_COVER, ROCKER_SHAFT, HEAD);

  private final String key;
  private final String word;

  BigPartKind(String word) {
    this.key = name().toLowerCase(Locale.ROOT).replace('_', '-');
    this.word = word;
  }

  /** The name in files and on the command line, such as {@code front-cover}. Never changes. */
  public String key() {
    return key;
  }

  public String word() {
    return word;
  }

  /** Whether each bank of cylinders has one of its own. */
  public boolean isOfABank() {
    return EACH_BANK.contains(this);
  }

  /** Whether an engine of this layout usually has one. */
  boolean isUsual(Layout layout) {
    return switch (this) {
      case ROCKER_SHAFT -> layout.rockers() == RockerMount.SHAFT;
      // A row of cylinders has its lifters behind a cover at its side; between two rows they lie
      // under the intake manifold.
      case LIFTER_COVER -> layout.banks().size() == 1;
      case OWN -> false;
      default -> true;
    };
  }
}
