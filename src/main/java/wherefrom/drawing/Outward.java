package wherefrom.drawing;

/**
 * How far from the crank's line things lie, seen from above, in bore pitches.
 *
 * @param lifter the middle of the lifters
 * @param inner the head's edge at the lifters
 * @param cup where pushrod and rocker meet
 * @param stud the rocker's pivot or shaft
 * @param valve where rocker and valve meet
 * @param outer the head's other edge
 * @param stub the end of the exhaust stubs
 */
record Outward(
    double lifter, double inner, double cup, double stud, double valve, double outer, double stub) {
  static final Outward VEE = new Outward(0.19, 0.36, 0.47, 0.62, 0.84, 1.08, 1.17);

  /** The cylinders lie between the case and the heads. */
  static final Outward OPPOSED = new Outward(0.20, 0.98, 1.08, 1.22, 1.43, 1.66, 1.75);

  /** The lifters on one side of the crank's line, the valves on the other. */
  static final Outward INLINE = new Outward(-0.44, -0.30, -0.20, -0.044, 0.19, 0.44, 0.54);
}
