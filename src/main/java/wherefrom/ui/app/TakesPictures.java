package wherefrom.ui.app;

import java.nio.file.Path;
import java.util.List;

/** Keeps the picture files that are dropped on it as photographs, instead of reading their tags. */
public interface TakesPictures extends Screen {
  /**
   * Takes what was dropped.
   *
   * @param files pictures, and folders of them
   */
  void pictures(List<Path> files);
}
