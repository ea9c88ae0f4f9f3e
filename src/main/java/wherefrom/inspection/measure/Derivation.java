package wherefrom.inspection.measure;

/** What is worked out from a plan's readings. */
public enum Derivation {
  /** The reading itself. */
  VALUE,
  /** Half of the reading, as of a bow on V-blocks (TM 10-3930-653-14&P). */
  HALF,
  /** Largest, smallest, spread and mean. */
  SPREAD,
  /** Each reading by itself, then largest, smallest, spread and mean. */
  EACH,
  /** The reading itself, and less the size that is wanted: the shim that makes it. */
  SHIM,
  /** What is pressed in less what is around it: the press. */
  PRESS,
  /** The largest reading alone, as of a feeler under a straightedge. */
  LARGEST,
  /** The first reading, at what the second one says: a pressure at a speed. */
  AT,
  /** The share of a regulated pressure that a cylinder does not hold (FAA AC 43.13-1B, 8-14). */
  LEAK,
  /** Read at several crank angles: the least of them, and of the parabola through them. */
  DEGREES,
  /** Heel to toe less across (TM 5-4210-229-14&P, 6-19). */
  LIFT,
  /** Two planes, two ways: out-of-round, taper, wear (TM 5-3805-262-34, 4-24). */
  JOURNAL,
  /** Three levels, two ways: out-of-round, taper, wear (FAA-H-8083-32, ch. 10). */
  BORE
}
