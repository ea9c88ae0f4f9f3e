package wherefrom.ui.measure;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import wherefrom.inspection.Subject;

/**
 * Figures that were typed and not taken, each by the reading and the tool it was typed for: whoever
 * comes back finds it on the pad again.
 */
final class UntakenFigures {
  /** A reading that was to be taken. */
  record At(Subject subject, String plan, String station, String tool) {}

  private final Map<At, String> figures = new HashMap<>();

  /**
   * Keeps what stands on the pad.
   *
   * @param figure with its unit; empty where nothing is left to be taken
   */
  void keep(At at, String figure) {
    if (figure.isEmpty()) {
      figures.remove(at);
    } else {
      figures.put(at, figure);
    }
  }

  /** What was typed and not taken there. */
  Optional<String> find(At at) {
    return Optional.ofNullable(figures.get(at));
  }
}
