package wherefrom.scan.grease;

import java.util.List;
import java.util.stream.Stream;

/**
 * What happened to the tag or to the picture of it. Seeds are made from the places in this list, so
 * new ones go to its end.
 */
enum Family {
  OIL,
  BLUR,
  SMALL,
  TILT,
  ROD,
  LIGHT,
  TORN,
  NOISE,
  MARKER,
  PAINT,
  MIXED,
  /** The paper was crumpled and smoothed out again. */
  WRINKLED,
  /** Oil went through the paper. */
  SOAKED,
  /** Thermal print that faded, from a head that left bands out. */
  THERMAL,
  /** Seen through the film of a bag. */
  BAG,
  /** A finger lies over a part. */
  FINGER,
  /** The rows were taken one after the other while the hand moved. */
  ROLLING,
  /** Written across with a pen. */
  HANDWRITING,
  JPEG,
  /** Moved while the shutter was open. */
  MOTION,
  /** Three kinds of all the others, each worse than in {@link #MIXED}. */
  HEAVY;

  static final int GRADES = 8;

  /** Those that earlier seeds were drawn from. */
  static final List<Family> FIRST = Stream.of(values()).limit(MIXED.ordinal() + 1L).toList();

  /** Those that came later. */
  static final List<Family> LATER = Stream.of(values()).skip(MIXED.ordinal() + 1L).toList();
}
