package wherefrom.ui.home;

import java.io.IOException;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import wherefrom.files.ExportedJobs;
import wherefrom.files.FileNames;
import wherefrom.job.ports.Damage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.files.DriveFolder;

/** Copies the whole open job into one file, as on a USB drive. */
final class CopyOut {
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss", Locale.ROOT);

  private CopyOut() {}

  /** Asks where to, and copies. */
  static void ask(ScreenContext context) {
    Path job = context.getJob().folder();
    String stamp = STAMP.format(ZonedDateTime.now(context.services().clock()));
    String name = FileNames.of(context.state().name(), "job " + stamp, ExportedJobs.OURS);
    new DriveFolder(
            context, "Where to copy the job to", job, folder -> copy(context, job, folder, name))
        .ask();
  }

  private static void copy(ScreenContext context, Path job, Path folder, String name) {
    Path file = FileNames.beside(folder.resolve(name));
    context.longWork(
        "Copying the job",
        context.writings().of(() -> export(context, job, file)),
        damage -> context.say(copied(file, damage)));
  }

  private static List<String> export(ScreenContext context, Path job, Path file)
      throws IOException {
    context.services().archives().export(job, file);
    return Damage.of(context.services().checks(), job);
  }

  /** A copy of a damaged job is not to be taken for a sound one. */
  private static String copied(Path file, List<String> damage) {
    return damage.isEmpty()
        ? "The whole job is copied to " + file + "."
        : "Copied to " + file + ", but the job is damaged. " + String.join(" ", damage);
  }
}
