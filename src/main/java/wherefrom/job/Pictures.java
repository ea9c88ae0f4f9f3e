package wherefrom.job;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Picture files. */
public interface Pictures {
  /**
   * Loads a PNG or JPEG file of any size, turned upright as its EXIF rotation says.
   *
   * @throws IOException with a plain sentence when the file is no picture that can be read
   */
  GreyImage load(Path file) throws IOException;

  /**
   * Loads a PNG or JPEG file in colour, turned upright as its EXIF rotation says and made smaller
   * while it is decoded.
   *
   * @param longest what its longer side has at most, in pixels
   * @throws IOException with a plain sentence when the file is no picture that can be read
   */
  ColourImage loadColour(Path file, int longest) throws IOException;

  /**
   * Saves a picture with marks drawn on it, as PNG. An older file of that name is replaced once the
   * new one is whole.
   */
  void saveMarked(GreyImage picture, List<PictureMark> marks, Path file) throws IOException;
}
