package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a kill leaves behind: files that were being written and folders that were being filled. Only
 * what has a name that we alone give, holds nothing else and is old is removed.
 */
final class Leftovers {
  /** Nothing takes this long to be written. */
  private static final Duration OLD = Duration.ofDays(1);

  private static final Pattern FILE =
      Pattern.compile(
          "part[0-9-]{5,24}\\.tmp|\\.wherefrom-[0-9-]{3,24}\\.part"
              + "|\\.[^/]+\\.(pdf|png|csv|zip|json)\\.part"
              + "|\\.logbook-begun\\.part|\\.logbook-index\\.part");

  private static final Pattern FOLDER = Pattern.compile("\\.(import|demo-)[0-9-]{3,24}");

  /** What the folders that were being filled hold besides a job's files. */
  private static final List<String> BESIDES = List.of("photos", "files.txt", JobIndex.FILE);

  private final Instant before;

  /**
   * @param now what is a day older than this is old
   */
  Leftovers(Instant now) {
    this.before = now.minus(OLD);
  }

  /** Whether a file has a name that only what we were writing has. */
  static boolean isOurs(String name) {
    return FILE.matcher(name).matches();
  }

  /** Removes what lies in a shop folder, its jobs' folders and its layouts. */
  void clearShop(Path shop) {
    clear(shop);
    for (Path folder : inside(shop)) {
      if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
        continue;
      }
      if (FOLDER.matcher(name(folder)).matches()) {
        clearFilled(folder);
      } else if (LogFiles.isJob(folder) || name(folder).equals(FileShelf.LAYOUTS)) {
        clearJob(folder);
      }
    }
  }

  /** Removes what lies in a job's folder. */
  void clearJob(Path job) {
    clear(job);
    clear(job.resolve(PhotoFiles.FOLDER));
  }

  /** Removes what lies in a folder itself. */
  void clear(Path folder) {
    for (Path file : inside(folder)) {
      if (isOurs(name(file)) && isOldFile(file)) {
        remove(file);
      }
    }
  }

  private void clearFilled(Path folder) {
    try (Stream<Path> walk = Files.walk(folder)) {
      List<Path> deepestFirst =
          walk.filter(each -> !each.equals(folder)).sorted((a, b) -> b.compareTo(a)).toList();
      boolean all = deepestFirst.stream().allMatch(each -> isOldAndOurs(folder, each));
      if (all && isOld(folder)) {
        deepestFirst.forEach(Leftovers::remove);
        remove(folder);
      }
    } catch (IOException e) {
      // It stays until it can be looked at.
    }
  }

  private boolean isOldAndOurs(Path folder, Path each) {
    String name = folder.relativize(each).toString().replace('\\', '/');
    boolean ours = JobFiles.isOne(name) || BESIDES.contains(name) || isOurs(name(each));
    return ours && isOld(each);
  }

  private boolean isOldFile(Path file) {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && isOld(file);
  }

  private boolean isOld(Path path) {
    try {
      Instant changed = Files.getLastModifiedTime(path, LinkOption.NOFOLLOW_LINKS).toInstant();
      return changed.isBefore(before);
    } catch (IOException e) {
      return false;
    }
  }

  private static List<Path> inside(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> paths = Files.list(folder)) {
      return paths.toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  private static String name(Path path) {
    return String.valueOf(path.getFileName());
  }

  private static void remove(Path path) {
    try {
      Files.delete(path);
    } catch (IOException e) {
      // It takes room and does no harm.
    }
  }
}
