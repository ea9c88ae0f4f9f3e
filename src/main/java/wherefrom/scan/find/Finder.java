package wherefrom.scan.find;

/**
 * Something like a finder pattern: dark, light, dark, light, dark as 1:1:3:1:1 across and down.
 *
 * @param x centre in pixels of the whole picture
 * @param module a seventh of its width, in pixels
 */
record Finder(double x, double y, double module) {}
