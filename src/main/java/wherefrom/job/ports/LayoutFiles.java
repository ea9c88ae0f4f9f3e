package wherefrom.job.ports;

import java.io.IOException;
import java.nio.file.Path;
import wherefrom.engine.Layout;
import wherefrom.files.Outgoing;

/** Layouts as JSON files. */
public interface LayoutFiles {
  /**
   * Reads a layout file.
   *
   * @throws IOException with a plain sentence that names the field, when the file is no sound
   *     layout
   */
  Layout read(Path file) throws IOException;

  /**
   * Writes a layout as a file.
   *
   * @throws IOException with a plain sentence when it cannot be written
   */
  void write(Layout layout, Outgoing json) throws IOException;
}
