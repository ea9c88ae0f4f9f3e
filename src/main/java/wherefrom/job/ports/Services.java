package wherefrom.job.ports;

import java.nio.file.Path;
import java.time.Clock;
import java.util.function.Function;
import wherefrom.job.By;
import wherefrom.job.image.Cameras;
import wherefrom.job.phone.Phones;
import wherefrom.job.photos.Photos;
import wherefrom.job.print.SheetPrinter;
import wherefrom.job.reader.TagReader;
import wherefrom.job.settings.SettingsStore;
import wherefrom.job.shelf.Shelf;

/**
 * Everything outside that the window and the command line work with; put together in one place when
 * the program starts.
 *
 * @param shelves opens the shelf in a folder; of a shop on a shared server the one that it has
 * @param servers the services of a shop on a shared server
 */
public record Services(
    Function<Path, Shelf> shelves,
    LayoutFiles layouts,
    Archives archives,
    Photos photos,
    SettingsStore settings,
    TagReader reader,
    Pictures pictures,
    Cameras cameras,
    Phones phones,
    SheetPrinter printer,
    Reports reports,
    JobChecks checks,
    Backups backups,
    Drives drives,
    Program program,
    Clock clock,
    Servers servers) {

  /** The same, for a bench whose jobs lie in folders. */
  public Services at(By by) {
    return onServer(folder -> shelves.apply(folder).at(by), archives, photos, checks, backups);
  }

  /** The same, with what has to do with jobs done on a shared server. */
  public Services onServer(
      Function<Path, Shelf> jobs,
      Archives whole,
      Photos pictured,
      JobChecks checked,
      Backups copied) {
    return new Services(
        jobs, layouts, whole, pictured, settings, reader, pictures, cameras, phones, printer,
        reports, checked, copied, drives, program, clock, servers);
  }
}
