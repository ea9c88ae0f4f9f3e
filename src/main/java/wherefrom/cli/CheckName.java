package wherefrom.cli;

import java.util.regex.Pattern;

/**
 * A check's name as it is shown and typed: {@code rule-25:stud@3EX}. The logbook has R25 for it,
 * which a person takes for a rod.
 */
final class CheckName {
  private static final Pattern KEY = Pattern.compile("^R(?=[0-9]+:)");
  private static final Pattern SHOWN = Pattern.compile("^rule-(?=[0-9]+:)");

  private CheckName() {}

  static String shown(String key) {
    return KEY.matcher(key).replaceFirst("rule-");
  }

  /** The name in the logbook; one that is typed as it stands there is taken, too. */
  static String key(String typed) {
    return SHOWN.matcher(typed).replaceFirst("R");
  }
}
