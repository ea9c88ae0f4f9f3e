package wherefrom.workings.timing;

/**
 * One reading of the dial on the lifter or valve.
 *
 * @param degrees the degree wheel, in crank degrees from top dead centre
 * @param lift the dial, in the unit of all readings
 */
public record DialReading(double degrees, double lift) {}
