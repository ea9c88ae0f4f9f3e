package wherefrom.scan.grease;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.LiveAnswer;
import wherefrom.job.reader.LiveReader;
import wherefrom.job.reader.Sighting;
import wherefrom.parts.TagCode;
import wherefrom.scan.PipelineReader;

/**
 * Streams of fifteen frames of a hand-held damaged tag, at 1280 x 720: {@code mvn -Pbench test
 * -Dtest=StreamBench}. {@code -Dgrease.seeds=1} sets the streams for each family and grade, {@code
 * -Dgrease.first=100} the first seed.
 */
@Tag("bench")
class StreamBench {
  private static final int SEEDS = Integer.getInteger("grease.seeds", 1);
  private static final int FIRST = Integer.getInteger("grease.first", 100);
  private static final int FRAMES = 15;
  private static final int WARM_UP = 40;

  private final List<TagCode> issued = GreaseFrames.issued(1_234_567);
  private final PipelineReader reader = new PipelineReader();
  private final List<Double> milliseconds = new ArrayList<>();
  private final List<Integer> firstFrames = new ArrayList<>();
  private final List<String> lost = new ArrayList<>();
  private int shown;
  private int wrong;

  @Test
  void streamsOfDamagedTagsAreRead() {
    for (Family family : Family.FIRST) {
      for (int grade = 1; grade <= Family.GRADES; grade++) {
        for (int seed = FIRST; seed < FIRST + SEEDS; seed++) {
          show(family, grade, seed);
        }
      }
    }
    List<Double> times =
        milliseconds.subList(Math.min(WARM_UP, milliseconds.size()), shown * FRAMES);
    times.sort(null);
    firstFrames.sort(null);
    System.out.printf(
        Locale.ROOT,
        "%d of %d streams read, %d wrong; read in frame %d in the middle case; %.0f ms a frame in"
            + " the middle, %.0f ms at the 95th percentile (processor time)%nlost: %s%n",
        firstFrames.size(),
        shown,
        wrong,
        firstFrames.get(firstFrames.size() / 2),
        times.get(times.size() / 2),
        times.get(times.size() * 95 / 100),
        lost);
    assertThat(wrong).isZero();
    assertThat(100.0 * firstFrames.size() / shown).isGreaterThanOrEqualTo(99.5);
    assertThat(times.get(times.size() * 95 / 100)).isLessThanOrEqualTo(33);
  }

  private void show(Family family, int grade, int seed) {
    TagCode code = GreaseFrames.pick(issued, GreaseFrames.seed(family, grade, seed, 720));
    GreaseScene scene = GreaseFrames.scene(family, grade, seed, 720, code);
    LiveReader live = reader.live(issued);
    Optional<Integer> first = Optional.empty();
    for (int frame = 1; frame <= FRAMES; frame++) {
      GreyImage image = scene.next(code.digits()).image();
      long begun = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      LiveAnswer answer = live.accept(image);
      milliseconds.add(
          (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - begun) / 1e6);
      for (Sighting sighting : sightings(answer)) {
        boolean right = sighting.text().equals(code.digits());
        wrong += right ? 0 : 1;
        first = right && first.isEmpty() ? Optional.of(frame) : first;
      }
    }
    shown++;
    first.ifPresentOrElse(
        firstFrames::add,
        () -> lost.add(family.name().toLowerCase(Locale.ROOT) + " " + grade + " seed " + seed));
  }

  private static List<Sighting> sightings(LiveAnswer answer) {
    if (answer instanceof LiveAnswer.Read read) {
      return List.of(read.sighting());
    }
    return answer instanceof LiveAnswer.Several several ? several.sightings() : List.of();
  }
}
