package wherefrom.ui.jobs;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import wherefrom.ui.app.Desk;

/** Brings exported jobs back among the jobs, and opens the last of them. */
public final class BringingBack {
  private final Desk desk;

  public BringingBack(Desk desk) {
    this.desk = desk;
  }

  /** Does nothing where there are none. The first that cannot be brought back ends it. */
  public void all(List<Path> files) {
    if (files.isEmpty()) {
      return;
    }
    Path shop = desk.settings().shop();
    desk.longWork(
        "Bringing a job back",
        () -> restore(files, shop),
        job -> desk.attempt(() -> desk.open(job)));
  }

  private Path restore(List<Path> files, Path shop) throws IOException {
    Path job = shop;
    for (Path file : files) {
      job = desk.equipment().archives().restore(file, shop);
    }
    return job;
  }
}
