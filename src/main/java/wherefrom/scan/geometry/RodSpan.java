package wherefrom.scan.geometry;

/**
 * What lies between two sides of a label's frame that both cross a thin rod.
 *
 * @param x of its middle on the picture, on the rod's middle line
 * @param y of its middle
 * @param module seen along the rod, in pixels
 * @param direction of the rod on the picture, in radians
 */
public record RodSpan(double x, double y, double module, double direction) {}
