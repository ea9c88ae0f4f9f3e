package wherefrom.scan.find;

import java.util.Optional;

/**
 * A connected patch of dark or light pixels.
 *
 * @param area in pixels of its level
 * @param centreX of its area
 * @param hull its convex hull, clockwise on the picture, in pixels of its level
 * @param quad the four sides round the hull, where there are such
 */
record Component(
    boolean dark, int area, double centreX, double centreY, Polygon hull, Optional<Polygon> quad) {}
