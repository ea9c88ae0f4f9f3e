package wherefrom.job.numbers;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * Figures as they were typed, by the input's key.
 *
 * @param name the person's name for the sheet
 */
public record Sheet(String name, Map<String, String> figures) {
  public Sheet {
    figures = Collections.unmodifiableMap(new TreeMap<>(figures));
  }

  public static Sheet empty(String name) {
    return new Sheet(name, Map.of());
  }

  /** With one figure as typed; an empty text takes it out. */
  public Sheet with(String key, String text) {
    Map<String, String> more = new TreeMap<>(figures);
    if (text.isEmpty()) {
      more.remove(key);
    } else {
      more.put(key, text);
    }
    return new Sheet(name, more);
  }
}
