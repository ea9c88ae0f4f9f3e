package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The names of the files of a logbook. */
final class LogFiles {
  private static final Pattern NAME = Pattern.compile("logbook-(\\d{4,9})\\.jsonl");

  /** Where the first entry is written before it gets its name. */
  static final String PART = ".logbook-begun.part";

  private LogFiles() {}

  static String name(int number) {
    return String.format(Locale.ROOT, "logbook-%04d.jsonl", number);
  }

  static boolean isOne(String name) {
    Matcher matcher = NAME.matcher(name);
    return matcher.matches() && name.equals(name(Integer.parseInt(matcher.group(1))));
  }

  /** Whether a name is of what an interrupted beginning may leave in a folder. */
  static boolean isLeft(String name) {
    return isOne(name)
        || Set.of(PART, JobLock.FILE, JobIndex.FILE).contains(name)
        || Leftovers.isOurs(name);
  }

  /** The files of a logbook by number, lowest first. */
  static SortedMap<Integer, Path> in(Path folder, LogDisk disk) throws IOException {
    SortedMap<Integer, Path> files = new TreeMap<>();
    for (Path file : disk.list(folder)) {
      Matcher matcher = NAME.matcher(String.valueOf(file.getFileName()));
      if (matcher.matches() && isOne(matcher.group())) {
        files.put(Integer.parseInt(matcher.group(1)), file);
      }
    }
    return files;
  }

  /** Whether a folder holds a job. */
  static boolean isJob(Path folder) {
    if (!Files.isDirectory(folder)) {
      return false;
    }
    try {
      return !in(folder, new RealDisk()).isEmpty();
    } catch (IOException e) {
      return false;
    }
  }
}
