package wherefrom.ui.bags;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import wherefrom.job.entry.BoltHole;
import wherefrom.quantity.Amount;

/** The lengths of bolts by their holes, in words. */
final class HoleWords {
  private HoleWords() {}

  /** {@code 2.5 in: 1, 3; 3 in: 2}; empty where no length is known. */
  static String lengths(List<BoltHole> holes) {
    Map<String, List<String>> byLength = new LinkedHashMap<>();
    for (BoltHole hole : holes) {
      hole.length()
          .map(Amount::text)
          .ifPresent(
              length ->
                  byLength
                      .computeIfAbsent(length, none -> new java.util.ArrayList<>())
                      .add(Integer.toString(hole.hole())));
    }
    return byLength.entrySet().stream()
        .map(one -> one.getKey() + ": " + String.join(", ", one.getValue()))
        .collect(Collectors.joining("; "));
  }
}
