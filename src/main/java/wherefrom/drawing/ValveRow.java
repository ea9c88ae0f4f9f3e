package wherefrom.drawing;

/**
 * A line along the crank at which a valve or a bearing lies, with the way outward from the crank.
 *
 * @param x of the valve
 * @param axis y of the crank's line
 * @param outward the pitch, with a minus where outward is up on the paper
 */
record ValveRow(double x, double axis, double outward) {

  /**
   * A point.
   *
   * @param pitches outward from the crank's line, in bore pitches
   * @param aside toward the flywheel, in the drawing's unit
   */
  Point at(double pitches, double aside) {
    return new Point(x + aside, y(pitches));
  }

  double y(double pitches) {
    return axis + outward * pitches;
  }
}
