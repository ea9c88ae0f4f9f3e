package wherefrom.job.settings;

import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.quantity.UnitSystem;

/**
 * What the person has set for this machine.
 *
 * @param shop the folder that holds the jobs
 * @param units for new jobs
 * @param textPercent 100, 150 or 200
 * @param look the colors of the window
 * @param pixelsPerMm measured with a card held to the screen; 0 while unknown
 * @param sound whether cues are sounded
 * @param scanner what a keyboard-type scanner sends round each code, and how its digits arrive
 * @param camera the id of the chosen camera; empty while none is chosen
 * @param cameraOn whether the camera reads beside the work
 * @param secondCopy the folder on a USB drive or another disk that gets a copy after each sitting
 * @param copied how far each job was last copied there, by the job's folder
 * @param lastSaved the folder in which the person last saved or chose a file
 * @param window where the window stood last
 * @param outOrder in which order parts are proposed to come out
 * @param workplace which bench this machine is, and whether its jobs lie on a shared server
 * @param usedSheet the sheet of labels that is used up in part; empty where none is
 */
public record Settings(
    Path shop,
    UnitSystem units,
    int textPercent,
    Appearance look,
    double pixelsPerMm,
    boolean sound,
    Scanner scanner,
    String camera,
    boolean cameraOn,
    Optional<Path> secondCopy,
    Map<String, Copy> copied,
    Optional<Path> lastSaved,
    WindowPlace window,
    OutOrder outOrder,
    Workplace workplace,
    Optional<UsedSheet> usedSheet) {
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

  /**
   * A sheet of labels of which some are left.
   *
   * @param stock the label stock's name
   * @param next the first label that is free, from 2
   */
  public record UsedSheet(String stock, int next) {
    private static final Pattern WRITTEN = Pattern.compile("(\\d{1,4}) (\\S.*)");

    /** In one line, as {@link #read} takes it. */
    public String written() {
      return next + " " + stock;
    }

    /** Such a line, or an empty one; empty where it is neither. */
    public static Optional<Optional<UsedSheet>> read(String line) {
      Matcher read = WRITTEN.matcher(line);
      if (!read.matches() || Integer.parseInt(read.group(1)) < 2) {
        return line.isEmpty() ? Optional.of(Optional.empty()) : Optional.empty();
      }
      return Optional.of(
          Optional.of(new UsedSheet(read.group(2), Integer.parseInt(read.group(1)))));
    }
  }

  public static Settings fresh(Path shop) {
    return new Settings(
        shop,
        UnitSystem.INCH,
        100,
        Appearance.SYSTEM,
        0,
        true,
        Scanner.PLAIN,
        "",
        false,
        Optional.empty(),
        Map.of(),
        Optional.empty(),
        WindowPlace.FIRST,
        OutOrder.CYLINDER,
        Workplace.ALONE,
        Optional.empty());
  }

  /** Settings in the making. */
  private static final class Draft {
    private Path shop;
    private UnitSystem units;
    private int textPercent;
    private Appearance look;
    private double pixelsPerMm;
    private boolean sound;
    private Scanner scanner;
    private String camera;
    private boolean cameraOn;
    private Optional<Path> secondCopy;
    private Map<String, Copy> copied;
    private WindowPlace window;
    private Optional<Path> lastSaved;
    private OutOrder outOrder;
    private Workplace workplace;
    private Optional<UsedSheet> usedSheet;

    private Draft(Settings from) {
      shop = from.shop;
      units = from.units;
      textPercent = from.textPercent;
      look = from.look;
      pixelsPerMm = from.pixelsPerMm;
      sound = from.sound;
      scanner = from.scanner;
      camera = from.camera;
      cameraOn = from.cameraOn;
      secondCopy = from.secondCopy;
      copied = from.copied;
      window = from.window;
      lastSaved = from.lastSaved;
      outOrder = from.outOrder;
      workplace = from.workplace;
      usedSheet = from.usedSheet;
    }

    private Settings done() {
      return new Settings(
          shop,
          units,
          textPercent,
          look,
          pixelsPerMm,
          sound,
          scanner,
          camera,
          cameraOn,
          secondCopy,
          copied,
          lastSaved,
          window,
          outOrder,
          workplace,
          usedSheet);
    }
  }

  private Settings with(Consumer<Draft> change) {
    Draft draft = new Draft(this);
    change.accept(draft);
    return draft.done();
  }

  public Settings withShop(Path folder) {
    return with(draft -> draft.shop = folder);
  }

  public Settings withUnits(UnitSystem chosen) {
    return with(draft -> draft.units = chosen);
  }

  public Settings withTextPercent(int percent) {
    return with(draft -> draft.textPercent = percent);
  }

  public Settings withLook(Appearance chosen) {
    return with(draft -> draft.look = chosen);
  }

  public Settings withPixelsPerMm(double measured) {
    return with(draft -> draft.pixelsPerMm = measured);
  }

  public Settings withSound(boolean on) {
    return with(draft -> draft.sound = on);
  }

  public Settings withScanner(Scanner typing) {
    return with(draft -> draft.scanner = typing);
  }

  public Settings withCamera(String id) {
    return with(draft -> draft.camera = id);
  }

  public Settings withCameraOn(boolean on) {
    return with(draft -> draft.cameraOn = on);
  }

  /**
   * The same with copies in another folder, or without.
   *
   * @param folder gets the copies from now on, none of which is there yet; empty for no copies
   */
  public Settings withSecondCopy(Optional<Path> folder) {
    return with(
        draft -> {
          draft.secondCopy = folder;
          draft.copied = Map.of();
        });
  }

  public Settings withCopied(Path job, Copy copy) {
    Map<String, Copy> copies = new HashMap<>(copied);
    copies.put(key(job), copy);
    return with(draft -> draft.copied = copies);
  }

  public Settings withWindow(WindowPlace place) {
    return with(draft -> draft.window = place);
  }

  public Settings withLastSaved(Path folder) {
    return with(draft -> draft.lastSaved = Optional.of(folder));
  }

  public Settings withWorkplace(Workplace place) {
    return with(draft -> draft.workplace = place);
  }

  public Settings withOutOrder(OutOrder order) {
    return with(draft -> draft.outOrder = order);
  }

  public Settings withUsedSheet(Optional<UsedSheet> sheet) {
    return with(draft -> draft.usedSheet = sheet);
  }

  /** How far a job was last copied, and when. */
  public Optional<Copy> findCopied(Path job) {
    return Optional.ofNullable(copied.get(key(job)));
  }

  private static String key(Path job) {
    return job.toAbsolutePath().normalize().toString();
  }
}
