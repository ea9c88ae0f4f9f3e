package wherefrom.job.reader;

import wherefrom.job.image.GreyImage;

/** Follows the frames of one camera; not safe for several threads. */
public interface LiveReader {
  /** Takes the next frame and says what there is to act on. */
  LiveAnswer accept(GreyImage frame);
}
