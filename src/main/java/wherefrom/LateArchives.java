package wherefrom;

import java.io.IOException;
import java.nio.file.Path;
import wherefrom.job.Archives;

/** Stands in until jobs can be exported. */
final class LateArchives implements Archives {
  @Override
  public void export(Path jobFolder, Path file) throws IOException {
    throw new IOException("A job cannot be exported yet. Copy its folder instead.");
  }

  @Override
  public Path restore(Path file, Path shelfFolder) throws IOException {
    throw new IOException("A job cannot be imported yet. Copy its folder instead.");
  }
}
