package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wherefrom.job.ports.Drives;

/**
 * The drives that the system has mounted where it mounts what is plugged in (Linux: {@code /media},
 * {@code /run/media}, {@code /mnt}; macOS: {@code /Volumes}), and every root but the home's.
 */
public final class MountedDrives implements Drives {
  private static final int DEEPEST = 2;

  private final List<Path> places;

  public MountedDrives() {
    this(List.of(Path.of("/media"), Path.of("/run/media"), Path.of("/mnt"), Path.of("/Volumes")));
  }

  /**
   * @param places folders in which drives are mounted, at most two folders down
   */
  MountedDrives(List<Path> places) {
    this.places = List.copyOf(places);
  }

  @Override
  public List<Drive> list() {
    List<Drive> drives = new ArrayList<>();
    for (Path place : places) {
      addBelow(place, DEEPEST, drives);
    }
    for (Path root : FileSystems.getDefault().getRootDirectories()) {
      boolean home = Path.of(System.getProperty("user.home", "")).startsWith(root);
      if (!home) {
        add(root, drives);
      }
    }
    drives.sort(Comparator.comparing(Drive::folder));
    return drives;
  }

  private void addBelow(Path place, int levels, List<Drive> drives) {
    if (levels == 0 || !Files.isDirectory(place)) {
      return;
    }
    try (DirectoryStream<Path> inside = Files.newDirectoryStream(place, Files::isDirectory)) {
      for (Path folder : inside) {
        if (isSameDisk(folder, place)) {
          addBelow(folder, levels - 1, drives);
        } else {
          add(folder, drives);
        }
      }
    } catch (IOException | DirectoryIteratorException e) {
      // What cannot be listed is no drive that can be offered.
    }
  }

  private static void add(Path folder, List<Drive> drives) {
    try {
      if (Files.isWritable(folder)) {
        drives.add(new Drive(folder, Files.getFileStore(folder).getUsableSpace()));
      }
    } catch (IOException e) {
      // A drive that is being pulled out.
    }
  }

  @Override
  public boolean isSameDisk(Path one, Path other) {
    try {
      return Files.getFileStore(one).equals(Files.getFileStore(other));
    } catch (IOException e) {
      return false;
    }
  }
}
