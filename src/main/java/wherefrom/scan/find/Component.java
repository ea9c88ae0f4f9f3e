package wherefrom.scan.find;

/**
 * A connected patch of dark or light pixels.
 *
 * @param area in pixels of its level
 * @param centreX of its area
 * @param hull its convex hull, clockwise on the picture, in pixels of its level
 */
record Component(boolean dark, int area, double centreX, double centreY, Polygon hull) {}
