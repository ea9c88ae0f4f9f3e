package wherefrom.job;

import java.io.IOException;
import java.nio.file.Path;

/** Picture files. */
public interface Pictures {
  /**
   * Loads a PNG or JPEG file of any size, turned upright as its EXIF rotation says.
   *
   * @throws IOException with a plain sentence when the file is no picture that can be read
   */
  GreyImage load(Path file) throws IOException;
}
