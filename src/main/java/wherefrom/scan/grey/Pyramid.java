package wherefrom.scan.grey;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.image.GreyImage;

/** The picture whole, at a half, a quarter and an eighth. */
public final class Pyramid {
  private static final int LEVELS = 4;
  private final List<Level> levels = new ArrayList<>();

  private Pyramid(GreyImage picture) {
    levels.add(new Level(picture, 1));
    while (levels.size() < LEVELS) {
      levels.add(levels.get(levels.size() - 1).half());
    }
  }

  public static Pyramid of(GreyImage picture) {
    return new Pyramid(picture);
  }

  /** Level 0 is the whole picture, each next one half the size. */
  public Level level(int number) {
    return levels.get(number);
  }

  /** The smallest level on which a length keeps at least so many pixels. */
  public Level withAtLeast(double pixels, double lengthInPicture) {
    int number = 0;
    double length = lengthInPicture / 2;
    while (number < LEVELS - 1 && length >= pixels) {
      number++;
      length /= 2;
    }
    return levels.get(number);
  }
}
