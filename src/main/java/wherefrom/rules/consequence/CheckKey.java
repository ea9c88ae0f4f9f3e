package wherefrom.rules.consequence;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The name by which a check of a rule is answered; as text it is {@code R11:pushrod-length@left}
 * and stands in logbooks.
 *
 * @param rule the rule's short name
 * @param name the check's own name within the rule
 * @param where the key of the place or site; empty for all of the engine
 */
public record CheckKey(String rule, String name, String where) {
  private static final Pattern FORM = Pattern.compile("([^:@]+):([^@]+)(?:@(.*))?");

  /** The check of this key; empty where the text is no such key. */
  public static Optional<CheckKey> find(String key) {
    Matcher form = FORM.matcher(key);
    return form.matches()
        ? Optional.of(
            new CheckKey(
                form.group(1), form.group(2), Optional.ofNullable(form.group(3)).orElse("")))
        : Optional.empty();
  }

  public String text() {
    return rule + ":" + name + (where.isEmpty() ? "" : "@" + where);
  }

  /** Whether it is this check, wherever it is asked. */
  public boolean is(KnownCheck check) {
    return rule.equals(check.rule()) && name.equals(check.id());
  }
}
