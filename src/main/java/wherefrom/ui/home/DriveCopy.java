package wherefrom.ui.home;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wherefrom.job.Drives;
import wherefrom.job.FileNames;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.files.FilesScreen;

/** Copies the whole job into one file on a drive that is plugged in, or in any folder. */
final class DriveCopy {
  private static final double GIGABYTE = 1e9;

  private final Desk desk;
  private final Path job;
  private final String name;

  /**
   * @param name of the file
   */
  DriveCopy(Desk desk, Path job, String name) {
    this.desk = desk;
    this.job = job;
    this.name = name;
  }

  /** Asks for the drive. */
  void ask() {
    List<Choice<Runnable>> ways = new ArrayList<>();
    for (Drives.Drive drive : desk.equipment().drives().list()) {
      Runnable there = () -> into(drive.folder());
      ways.add(new Choice<>(there, drive.folder().toString(), free(drive.freeBytes())));
    }
    String none = ways.isEmpty() ? "no USB drive is found: plug one in, or copy into a folder" : "";
    ways.add(new Choice<>(this::askFolder, "Another folder", none));
    desk.navigator()
        .open(() -> new ChoiceScreen<>(desk, "Where to copy the job to", ways, Runnable::run));
  }

  private static String free(long bytes) {
    return String.format(Locale.ROOT, "%.1f GB free", bytes / GIGABYTE);
  }

  private void askFolder() {
    desk.navigator()
        .open(() -> FilesScreen.folder(desk, "Where to copy the job to", this::into));
  }

  private void into(Path folder) {
    if (desk.equipment().drives().isSameDisk(job, folder)) {
      askSameDisk(folder);
    } else {
      copy(folder);
    }
  }

  private void askSameDisk(Path folder) {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(this::ask, "Choose another place", "a USB drive or another disk"),
            new Choice<>(() -> copy(folder), "Copy there all the same", ""));
    String title = "That is the job's own disk: both are lost with it";
    desk.navigator().open(() -> new ChoiceScreen<>(desk, title, ways, Runnable::run));
  }

  private void copy(Path folder) {
    Path file = FileNames.beside(folder.resolve(name));
    desk.background(
        () -> export(file), written -> desk.say("The whole job is copied to " + written + "."));
  }

  private Path export(Path file) throws IOException {
    desk.equipment().archives().export(job, file);
    return file;
  }
}
