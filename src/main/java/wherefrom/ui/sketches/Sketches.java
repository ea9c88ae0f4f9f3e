package wherefrom.ui.sketches;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.inspection.Check;

/** The drawing of everything that is looked at. */
final class Sketches {
  private static final List<Sketch> ALL =
      Stream.of(
              ValvetrainSketches.ROWS,
              ValveSketches.ROWS,
              BottomEndSketches.ROWS,
              CastingSketches.ROWS,
              TeardownSketches.ROWS)
          .flatMap(List::stream)
          .toList();

  private Sketches() {}

  /** The drawing of what a quick test is for. */
  static Optional<Sketch> find(Check check) {
    return find(check.of());
  }

  /** The drawing of a kind or a feature, by its key. */
  static Optional<Sketch> find(String key) {
    return ALL.stream().filter(sketch -> sketch.of().equals(key)).findFirst();
  }

  /** The spots that a test looks at. */
  static List<Sketch.Mark> marks(Check check) {
    return find(check).stream()
        .flatMap(sketch -> sketch.marks().stream())
        .filter(mark -> mark.check().equals(check.key()))
        .toList();
  }
}
