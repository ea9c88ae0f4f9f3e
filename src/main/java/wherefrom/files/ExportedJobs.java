package wherefrom.files;

import java.util.List;
import java.util.Locale;

/** What the files of exported jobs are called. */
public final class ExportedJobs {
  /**
   * What is written. The system opens this ending with the program, and any other program that
   * knows ZIP files can look inside.
   */
  public static final String OURS = ".wherefrom.zip";

  /** What is read. */
  public static final List<String> ENDINGS = List.of(".zip", ".wherefrom");

  private ExportedJobs() {}

  /** Whether a word of a call names such a file: no command is called so. */
  public static boolean isNamed(String word) {
    String lower = word.toLowerCase(Locale.ROOT);
    return !lower.startsWith("-") && ENDINGS.stream().anyMatch(lower::endsWith);
  }
}
