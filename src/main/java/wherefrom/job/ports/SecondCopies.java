package wherefrom.job.ports;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import wherefrom.job.LogbookException;
import wherefrom.job.settings.Settings;

/** The copies of jobs in a second folder: made after a sitting, without anybody asking. */
public final class SecondCopies {

  /** How a copy went. */
  public sealed interface Outcome {
    /**
     * The copy is up to date.
     *
     * @param settled whether it can be pulled out
     */
    record Made(Settings.Copy copy, boolean settled) implements Outcome {}

    /**
     * There is no copy of what was done last.
     *
     * @param away whether the folder is not there, as when the USB drive is not put in
     */
    record Failed(boolean away, String sentence) implements Outcome {}
  }

  private final Backups backups;
  private final Clock clock;

  public SecondCopies(Backups backups, Clock clock) {
    this.backups = backups;
    this.clock = clock;
  }

  /**
   * Brings the copy of a job up to date. A folder that is not there is not made: it would lie where
   * the USB drive is put in later.
   */
  public Outcome copy(Path job, Path second) {
    Optional<String> away = findAway(second);
    if (away.isPresent()) {
      return new Outcome.Failed(true, away.get());
    }
    Instant begun = clock.instant();
    try {
      Backups.Copied copied = backups.copy(job, second);
      return copied.damage().isEmpty()
          ? new Outcome.Made(new Settings.Copy(begun, copied.upTo()), copied.settled())
          : new Outcome.Failed(false, damaged(copied));
    } catch (IOException | UncheckedIOException | LogbookException e) {
      return new Outcome.Failed(false, e.getMessage() + " The job itself is safe here.");
    }
  }

  private static String damaged(Backups.Copied copied) {
    return String.join(" ", copied.damage())
        + " It was copied as it is to "
        + copied.folder()
        + "; what was sound there is as it was.";
  }

  /** That the folder for copies is not there, in a sentence; empty while it is. */
  public static Optional<String> findAway(Path second) {
    return Files.isDirectory(second)
        ? Optional.empty()
        : Optional.of("USB drive not found: " + second + ". Plug it in, and the job is copied.");
  }

  /** What is wrong with a folder for copies, in a sentence; empty when nothing is. */
  public static Optional<String> findFault(Path shop, Path second) {
    boolean within =
        second.toAbsolutePath().normalize().startsWith(shop.toAbsolutePath().normalize());
    return within
        ? Optional.of(
            "That is inside the jobs folder. A copy there is lost with it. Choose a"
                + " folder on a USB drive or another disk.")
        : Optional.empty();
  }
}
