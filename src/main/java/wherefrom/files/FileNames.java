package wherefrom.files;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Names of files for other people: they carry the job and what the file is, in any script. */
public final class FileNames {
  /** File systems take 255 bytes, and a sign has up to four in UTF-8. */
  private static final int MOST_SIGNS = 40;

  private static final Pattern OTHER = Pattern.compile("[^\\p{L}\\p{M}\\p{N}]+");
  private static final Pattern EDGES = Pattern.compile("^-+|-+$");

  private FileNames() {}

  /**
   * {@code launch-v8-build-record.pdf}.
   *
   * @param kind what the file is, such as {@code build record}
   * @param ending with its point
   */
  public static String of(String job, String kind, String ending) {
    String name = dashed(job);
    return (name.isEmpty() ? "job" : name) + "-" + dashed(kind) + ending;
  }

  private static String dashed(String words) {
    String composed = Normalizer.normalize(words, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    return trimmed(cut(trimmed(OTHER.matcher(composed).replaceAll("-"))));
  }

  private static String trimmed(String name) {
    return EDGES.matcher(name).replaceAll("");
  }

  private static String cut(String name) {
    boolean fits = name.codePointCount(0, name.length()) <= MOST_SIGNS;
    return fits ? name : name.substring(0, name.offsetByCodePoints(0, MOST_SIGNS));
  }

  /**
   * A name beside a file of which nothing is there yet: {@code money-2.csv} for {@code money.csv}.
   */
  public static Path beside(Path file) {
    String name = String.valueOf(file.getFileName());
    String ending = ending(name);
    String stem = name.substring(0, name.length() - ending.length());
    Path free = file;
    for (int copy = 2; Files.exists(free, LinkOption.NOFOLLOW_LINKS); copy++) {
      free = file.resolveSibling(stem + "-" + copy + ending);
    }
    return free;
  }

  /** With its point; that of an exported job has two. */
  private static String ending(String name) {
    if (name.endsWith(ExportedJobs.OURS)) {
      return ExportedJobs.OURS;
    }
    int point = name.lastIndexOf('.');
    return point > 0 ? name.substring(point) : "";
  }
}
