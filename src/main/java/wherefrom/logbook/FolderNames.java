package wherefrom.logbook;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * Safe folder names from what a person calls a job: a few plain letters that every system takes.
 */
public final class FolderNames {
  private static final int LONGEST = 60;
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern OTHER = Pattern.compile("[^a-z0-9]+");
  private static final Pattern EDGES = Pattern.compile("^-+|-+$");

  /** What leads elsewhere, means something on some system, or cannot be seen. */
  private static final Pattern NO_NAME = Pattern.compile("[\\p{Cntrl}/\\\\:*?\"<>|]");

  private static final int LONGEST_TYPED = 200;

  /** Names that mean a device on some systems, or something else on a shelf. */
  private static final Pattern TAKEN =
      Pattern.compile("con|prn|aux|nul|com[0-9]|lpt[0-9]|" + FileShelf.LAYOUTS);

  private FolderNames() {}

  /** A folder name for a job; never empty. */
  static String of(String name) {
    String plain = MARKS.matcher(Normalizer.normalize(name, Normalizer.Form.NFKD)).replaceAll("");
    String dashed = OTHER.matcher(plain.toLowerCase(Locale.ROOT)).replaceAll("-");
    String cut = trimmed(trimmed(dashed).substring(0, Math.min(LONGEST, trimmed(dashed).length())));
    if (cut.isEmpty()) {
      return "job";
    }
    return TAKEN.matcher(cut).matches() ? "job-" + cut : cut;
  }

  /**
   * Whether a name that somebody else gave is that of one folder on every system: it leads into no
   * other folder and to no device.
   */
  public static boolean isOne(String name) {
    return !name.isBlank()
        && name.length() <= LONGEST_TYPED
        && !NO_NAME.matcher(name).find()
        && !name.startsWith(" ")
        && !name.startsWith(".")
        && !name.endsWith(" ")
        && !name.endsWith(".")
        && !TAKEN.matcher(name.toLowerCase(Locale.ROOT).replaceFirst("\\..*", "")).matches();
  }

  private static String trimmed(String name) {
    return EDGES.matcher(name).replaceAll("");
  }

  /** A folder that does not exist yet, named after the job. */
  static Path free(Path shelf, String name) {
    return free(shelf, name, folder -> !Files.exists(folder, LinkOption.NOFOLLOW_LINKS));
  }

  /** A folder in which nothing was ever kept, named after the job. */
  static Path unused(Path shelf, String name) {
    return free(shelf, name, JobFolder::isFree);
  }

  private static Path free(Path shelf, String name, Predicate<Path> isFree) {
    String wanted = of(name);
    Path folder = shelf.resolve(wanted);
    for (int copy = 2; !isFree.test(folder); copy++) {
      folder = shelf.resolve(wanted + "-" + copy);
    }
    return folder;
  }
}
