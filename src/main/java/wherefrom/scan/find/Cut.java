package wherefrom.scan.find;

/**
 * One way to cut a picture into dark and light.
 *
 * @param level of the pyramid, 0 the whole picture
 * @param reach half the side of the square around a pixel, in pixels of that level
 * @param below grey values by which a dark pixel lies below the mean of its square
 */
public record Cut(int level, int reach, int below) {}
