package wherefrom;

import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.function.Supplier;
import wherefrom.job.BuiltVersion;
import wherefrom.job.image.Cameras;
import wherefrom.job.ports.Program;
import wherefrom.job.ports.Services;
import wherefrom.logbook.BackupFolder;
import wherefrom.logbook.FileChecks;
import wherefrom.logbook.FileShelf;
import wherefrom.logbook.JobArchives;
import wherefrom.logbook.LayoutJson;
import wherefrom.logbook.MountedDrives;
import wherefrom.logbook.PhotoFiles;
import wherefrom.phone.HttpPhones;
import wherefrom.print.PdfSheetPrinter;
import wherefrom.report.FileReports;
import wherefrom.scan.PipelineReader;
import wherefrom.scan.camera.FfmpegCameras;
import wherefrom.scan.picture.PictureFiles;
import wherefrom.server.SharedShop;
import wherefrom.settings.FileSettings;

/**
 * Puts the services together. What takes time to load, such as the label stock, the reader and
 * random numbers, is loaded when it is first used.
 */
final class Wiring {
  /** The system property that moves the settings and the shop to another folder. */
  static final String HOME = "wherefrom.home";

  private Wiring() {}

  static Services services(Clock clock) {
    Supplier<SecureRandom> random = new Lazy<>(SecureRandom::new);
    return new Services(
        folder -> new FileShelf(folder, clock, () -> random.get().nextInt()),
        new LayoutJson(),
        new JobArchives(),
        new PhotoFiles(),
        settings(),
        new LateReader(PipelineReader::new),
        new PictureFiles(),
        cameras(),
        new LatePhones(() -> new HttpPhones(System::nanoTime, random.get()::nextBytes)),
        new LatePrinter(PdfSheetPrinter::new),
        new FileReports(),
        new FileChecks(),
        new BackupFolder(),
        new MountedDrives(),
        new Program(BuiltVersion.get(), folders().settings()),
        clock,
        (here, address, by) ->
            SharedShop.services(
                here, address, by, folders().cache(), System.getenv(), random.get()::nextInt));
  }

  private static Cameras cameras() {
    return new FfmpegCameras();
  }

  private static FileSettings settings() {
    HomeFolders folders = folders();
    return new FileSettings(folders.settings(), folders.shop());
  }

  /** Where settings, jobs and caches lie. */
  static HomeFolders folders() {
    String moved = System.getProperty(HOME, "");
    return moved.isBlank()
        ? HomeFolders.of(
            System.getProperty("os.name", ""), System.getenv(), user(), Files::isDirectory)
        : HomeFolders.in(Path.of(moved));
  }

  /** The person's home; where the system knows none, it says so with a question mark. */
  private static Path user() {
    String home = System.getProperty("user.home", "");
    return Path.of(home.equals("?") ? "" : home).toAbsolutePath();
  }
}
