package wherefrom.job.settings;

import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import wherefrom.quantity.UnitSystem;

/**
 * What the person has set for this machine.
 *
 * @param shop the folder that holds the jobs
 * @param units for new jobs
 * @param textPercent 100, 150 or 200
 * @param pixelsPerMm measured with a card held to the screen; 0 while unknown
 * @param sound whether cues are sounded
 * @param scanner what a keyboard-type scanner sends round each code, and how its digits arrive
 * @param camera the id of the chosen camera; empty while none is chosen
 * @param cameraOn whether the camera reads beside the work
 * @param secondCopy the folder on a USB drive or another disk that gets a copy after each sitting
 * @param copied how far each job was last copied there, by the job's folder
 * @param lastSaved the folder in which the person last saved or chose a file
 */
public record Settings(
    Path shop,
    UnitSystem units,
    int textPercent,
    double pixelsPerMm,
    boolean sound,
    Scanner scanner,
    String camera,
    boolean cameraOn,
    Optional<Path> secondCopy,
    Map<String, Copy> copied,
    Optional<Path> lastSaved) {
  public Settings {
    copied = Map.copyOf(copied);
  }

  /**
   * How a keyboard-type scanner types.
   *
   * @param prefix what it sends before each code; empty for nothing
   * @param suffix what it sends after each code and before Enter or Tab; empty for nothing
   * @param digits how the digits 0 to 9 arrive where its layout was taught; empty while not taught
   */
  public record Scanner(String prefix, String suffix, String digits) {
    /** Nothing is set: most scanners need nothing. */
    public static final Scanner PLAIN = new Scanner("", "", "");
  }

  /**
   * The last copy of a job.
   *
   * @param time when it was made, by the clock of that time
   * @param upTo the sequence of the last entry that it holds; 0 where that is not known
   */
  public record Copy(Instant time, long upTo) {}

  public static Settings fresh(Path shop) {
    return new Settings(
        shop,
        UnitSystem.INCH,
        100,
        0,
        true,
        Scanner.PLAIN,
        "",
        false,
        Optional.empty(),
        Map.of(),
        Optional.empty());
  }

  public Settings withShop(Path folder) {
    return new Settings(
        folder,
        units,
        textPercent,
        pixelsPerMm,
        sound,
        scanner,
        camera,
        cameraOn,
        secondCopy,
        copied,
        lastSaved);
  }

  public Settings withUnits(UnitSystem chosen) {
    return new Settings(
        shop,
        chosen,
        textPercent,
        pixelsPerMm,
        sound,
        scanner,
        camera,
        cameraOn,
        secondCopy,
        copied,
        lastSaved);
  }

  public Settings withTextPercent(int percent) {
    return new Settings(
        shop,
        units,
        percent,
        pixelsPerMm,
        sound,
        scanner,
        camera,
        cameraOn,
        secondCopy,
        copied,
        lastSaved);
  }

  public Settings withPixelsPerMm(double measured) {
    return new Settings(
        shop,
        units,
        textPercent,
        measured,
        sound,
        scanner,
        camera,
        cameraOn,
        secondCopy,
        copied,
        lastSaved);
  }

  public Settings withSound(boolean on) {
    return new Settings(
        shop,
        units,
        textPercent,
        pixelsPerMm,
        on,
        scanner,
        camera,
        cameraOn,
        secondCopy,
        copied,
        lastSaved);
  }

  public Settings withScanner(Scanner typing) {
    return new Settings(
        shop,
        units,
        textPercent,
        pixelsPerMm,
        sound,
        typing,
        camera,
        cameraOn,
        secondCopy,
        copied,
        lastSaved);
  }

  public Settings withCamera(String id) {
    return new Settings(
        shop,
        units,
        textPercent,
        pixelsPerMm,
        sound,
        scanner,
        id,
        cameraOn,
        secondCopy,
        copied,
        lastSaved);
  }

  public Settings withCameraOn(boolean on) {
    return new Settings(
        shop,
        units,
        textPercent,
        pixelsPerMm,
        sound,
        scanner,
        camera,
        on,
        secondCopy,
        copied,
        lastSaved);
  }

  /**
   * The same with copies in another folder, or without.
   *
   * @param folder gets the copies from now on, none of which is there yet; empty for no copies
   */
  public Settings withSecondCopy(Optional<Path> folder) {
    return new Settings(
        shop,
        units,
        textPercent,
        pixelsPerMm,
        sound,
        scanner,
        camera,
        cameraOn,
        folder,
        Map.of(),
        lastSaved);
  }

  public Settings withCopied(Path job, Copy copy) {
    Map<String, Copy> copies = new HashMap<>(copied);
    copies.put(key(job), copy);
    return new Settings(
        shop,
        units,
        textPercent,
        pixelsPerMm,
        sound,
        scanner,
        camera,
        cameraOn,
        secondCopy,
        copies,
        lastSaved);
  }

  public Settings withLastSaved(Path folder) {
    return new Settings(
        shop,
        units,
        textPercent,
        pixelsPerMm,
        sound,
        scanner,
        camera,
        cameraOn,
        secondCopy,
        copied,
        Optional.of(folder));
  }

  /** How far a job was last copied, and when. */
  public Optional<Copy> findCopied(Path job) {
    return Optional.ofNullable(copied.get(key(job)));
  }

  private static String key(Path job) {
    return job.toAbsolutePath().normalize().toString();
  }
}
