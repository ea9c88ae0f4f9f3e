package wherefrom.ui.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import wherefrom.job.ports.Drives;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;

/**
 * Asks where a copy goes: a drive that is plugged in, or any folder; warns where the copy would be
 * lost together with what is copied.
 *
 * @param original what is copied
 * @param done is given the folder
 */
public record DriveFolder(ScreenContext context, String title, Path original, Consumer<Path> done) {
  private static final double GIGABYTE = 1e9;
  private static final double MEGABYTE = 1e6;

  /** Asks for the drive. */
  public void ask() {
    List<Choice<Runnable>> ways = new ArrayList<>();
    for (Drives.Drive drive : context.services().drives().list()) {
      Runnable there = () -> chosen(drive.folder());
      ways.add(new Choice<>(there, drive.folder().toString(), free(drive.freeBytes())));
    }
    String none = ways.isEmpty() ? "no USB drive is found: plug one in, or choose a folder" : "";
    ways.add(new Choice<>(this::askFolder, "Another folder", none));
    choose(title, ways);
  }

  private static String free(long bytes) {
    return bytes < GIGABYTE
        ? String.format(Locale.ROOT, "%.0f MB free", bytes / MEGABYTE)
        : String.format(Locale.ROOT, "%.1f GB free", bytes / GIGABYTE);
  }

  private void choose(String question, List<Choice<Runnable>> ways) {
    context.navigator().open(() -> new ChoiceScreen<>(context, question, ways, Runnable::run));
  }

  private void askFolder() {
    context.navigator().open(() -> FilesScreen.folder(context, title, this::chosen));
  }

  private void chosen(Path folder) {
    if (!context.services().drives().isSameDisk(original, folder)) {
      done.accept(folder);
      return;
    }
    choose(
        "That is the job's own disk: both are lost with it",
        List.of(
            new Choice<>(this::ask, "Choose another place", "a USB drive or another disk"),
            new Choice<>(() -> done.accept(folder), "Copy there all the same", "")));
  }
}
