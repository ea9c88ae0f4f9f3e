package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.ports.Drives;

class MountedDrivesTest {
  @TempDir Path folder;

  @Test
  void aFolderThatIsNoDriveOfItsOwnIsNotOffered() throws IOException {
    Files.createDirectories(folder.resolve("someone/no stick"));
    assertThat(new MountedDrives(List.of(folder, folder.resolve("not there"))).list()).isEmpty();
  }

  /** Shared memory is a file system of its own, mounted one folder down. */
  @Test
  void aMountedFileSystemIsOffered() throws IOException {
    Path mounted = Path.of("/dev/shm");
    MountedDrives drives = new MountedDrives(List.of(Path.of("/dev")));
    assumeTrue(
        Files.isWritable(mounted) && !drives.isSameDisk(mounted, Path.of("/dev")), "a mount");
    assertThat(drives.list()).extracting(Drives.Drive::folder).contains(mounted);
    assertThat(drives.isSameDisk(folder, folder.getParent())).isTrue();
  }
}
