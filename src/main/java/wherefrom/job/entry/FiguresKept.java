package wherefrom.job.entry;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * The figures of one sheet of the numbers, as they were typed; the last entry of a sheet counts.
 *
 * @param sheet such as {@code plan-now} or {@code working-compression-ratio}
 * @param name the person's name for it; empty with no figures where the sheet was thrown away
 * @param figures as typed, by the input's key: {@code 3.900 in±0.0005 in max}
 */
public record FiguresKept(String sheet, String name, Map<String, String> figures)
    implements JobEntry {
  public FiguresKept {
    figures = Collections.unmodifiableMap(new TreeMap<>(figures));
  }
}
