package wherefrom.scan.grease;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import wherefrom.parts.TagCode;
import wherefrom.scan.StageProbe;
import wherefrom.scan.StageProbe.Stage;

/** Where the frames were lost that were not read. */
final class GreaseLosses {
  private final Map<Stage, Integer> stages = new EnumMap<>(Stage.class);
  private final Map<String, Stage> frames = new TreeMap<>();

  void add(Family family, int grade, int seed, GreaseFrame frame, Collection<TagCode> issued) {
    Stage stage = StageProbe.of(frame.image(), issued, frame.text(), frame.corners());
    stages.merge(stage, 1, Integer::sum);
    String name = family.name().toLowerCase(Locale.ROOT);
    frames.put(
        String.format(
            Locale.ROOT, "%s %d seed %d, %d lines", name, grade, seed, frame.image().height()),
        stage);
  }

  /** Counts by stage, then each frame. */
  String table() {
    StringBuilder table = new StringBuilder("lost by stage: ").append(stages).append('\n');
    frames.forEach((frame, stage) -> table.append(frame).append(": ").append(stage).append('\n'));
    return table.toString();
  }
}
