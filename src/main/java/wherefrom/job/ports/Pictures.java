package wherefrom.job.ports;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import wherefrom.files.Outgoing;
import wherefrom.job.image.ColourImage;
import wherefrom.job.image.GreyImage;
import wherefrom.job.tray.PictureMark;

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
   * Writes a picture with marks drawn on it, as PNG.
   *
   * @throws IOException with a plain sentence when it cannot be written
   */
  void saveMarked(GreyImage picture, List<PictureMark> marks, Outgoing png) throws IOException;
}
