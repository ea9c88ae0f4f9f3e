package wherefrom.scan.grease;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.reader.Corner;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Unread;
import wherefrom.parts.TagCode;
import wherefrom.scan.PipelineReader;

/** A tag that is found and cannot be read is said once, where it lies. */
class UnreadOnceTest {
  private static final List<TagCode> ISSUED = GreaseFrames.issued(2_222_222);
  private static final List<Family> UNREADABLE = List.of(Family.BLUR, Family.MARKER, Family.PAINT);
  private static final int WORST = 8;
  private static final int SEEDS = 3;

  static boolean liesOn(List<Corner> label, Unread place) {
    double x = place.outline().stream().mapToDouble(Corner::x).average().orElseThrow();
    double y = place.outline().stream().mapToDouble(Corner::y).average().orElseThrow();
    double labelX = label.stream().mapToDouble(Corner::x).average().orElseThrow();
    double labelY = label.stream().mapToDouble(Corner::y).average().orElseThrow();
    double half = Math.hypot(label.get(0).x() - labelX, label.get(0).y() - labelY);
    return Math.hypot(x - labelX, y - labelY) < half;
  }

  @Test
  void oneLabelIsSaidOnce() {
    List<Long> onOneLabel = new ArrayList<>();
    for (Family family : UNREADABLE) {
      for (int seed = 0; seed < SEEDS; seed++) {
        TagCode code = GreaseFrames.pick(ISSUED, family.ordinal() * 31L + seed);
        GreaseFrame frame = GreaseFrames.frame(family, WORST, 700 + seed, 720, code);
        Reading reading = new PipelineReader().read(frame.image(), List.of());
        onOneLabel.add(
            reading.unread().stream().filter(place -> liesOn(frame.corners(), place)).count());
        if (!reading.sightings().isEmpty()) {
          assertThat(onOneLabel.get(onOneLabel.size() - 1)).isZero();
        }
      }
    }
    assertThat(onOneLabel).allMatch(count -> count <= 1).contains(1L);
  }
}
