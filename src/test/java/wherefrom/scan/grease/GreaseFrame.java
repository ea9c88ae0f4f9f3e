package wherefrom.scan.grease;

import java.util.List;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Corner;

/**
 * A frame and what is on it.
 *
 * @param text what the symbol says
 * @param corners of the symbol, clockwise from its top left
 */
record GreaseFrame(GreyImage image, String text, List<Corner> corners) {}
