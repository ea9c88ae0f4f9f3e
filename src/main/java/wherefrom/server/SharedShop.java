package wherefrom.server;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.function.IntSupplier;
import wherefrom.job.By;
import wherefrom.job.ports.Services;
import wherefrom.job.settings.ServerAddress;
import wherefrom.job.shelf.Shelf;
import wherefrom.logbook.FileShelf;

/** A shop whose jobs lie on a shared server, as services for the window and the command line. */
public final class SharedShop {
  private SharedShop() {}

  /**
   * The services of a shop whose jobs lie on the server. Nothing is asked of it yet.
   *
   * @param folders the services of this machine, for all that is not on the server
   * @param cache a folder of this machine that can be deleted at any time
   * @param environment the system's, for the password
   * @param random any numbers, evenly spread: engine numbers are drawn from them
   */
  public static Services services(
      Services folders,
      ServerAddress address,
      By by,
      Path cache,
      Map<String, String> environment,
      IntSupplier random) {
    Database database = new Database(address, environment);
    Mirror mirror = new Mirror(database, cache.resolve(folderName(address)));
    ServerPhotos photos = new ServerPhotos(database, mirror);
    ServerFolders whole = new ServerFolders(database, mirror, photos);
    Clock clock = folders.clock();
    FileShelf copies = new FileShelf(mirror.folder(), clock, random);
    Shelf layouts = folders.shelves().apply(folders.settings().load().shop());
    Shelf shelf = new ServerShelf(database, mirror, copies, layouts, clock, by);
    return folders.onServer(folder -> shelf, whole, photos, whole, whole);
  }

  private static String folderName(ServerAddress address) {
    return (address.host() + "-" + address.port() + "-" + address.database())
        .replaceAll("[^A-Za-z0-9.-]", "_");
  }
}
