package wherefrom.scan.grease;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Sighting;
import wherefrom.parts.TagCode;
import wherefrom.scan.PipelineReader;

/** Twelve-megapixel photographs of trays: {@code mvn -Pbench test -Dtest=TrayBench}. */
@Tag("bench")
class TrayBench {
  private static final int SEEDS = Integer.getInteger("grease.seeds", 3);
  private static final int FIRST = Integer.getInteger("grease.first", 100);
  private final List<TagCode> issued = GreaseFrames.issued(1_234_567);
  private final PipelineReader reader = new PipelineReader();

  @Test
  void traysOfThirtyTwoAreRead() {
    assertThat(trays(32, 8)).isGreaterThanOrEqualTo(31.0);
  }

  @Test
  void traysOfNinetySixAreRead() {
    assertThat(trays(96, 12)).isGreaterThanOrEqualTo(90.0);
  }

  /** Prints what each reader makes of them; the mean count of this one. */
  private double trays(int count, int columns) {
    List<TagCode> tray = issued.subList(0, count);
    Set<String> expected = tray.stream().map(TagCode::digits).collect(Collectors.toSet());
    Map<String, Function<GreyImage, List<String>>> readers = new LinkedHashMap<>();
    readers.put("this reader", this::texts);
    readers.putAll(OtherReaders.all());
    Map<String, Integer> read = new LinkedHashMap<>();
    Map<String, Double> took = new LinkedHashMap<>();
    int wrong = 0;
    for (int seed = FIRST; seed < FIRST + SEEDS; seed++) {
      GreyImage photograph = GreaseTray.photograph(tray, columns, seed);
      for (Map.Entry<String, Function<GreyImage, List<String>>> each : readers.entrySet()) {
        long begun = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        Set<String> texts = new HashSet<>(each.getValue().apply(photograph));
        double seconds =
            (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - begun) / 1e9;
        took.merge(each.getKey(), seconds, Math::max);
        wrong += texts.stream().anyMatch(text -> !expected.contains(text)) ? 1 : 0;
        texts.retainAll(expected);
        read.merge(each.getKey(), texts.size(), Integer::sum);
      }
    }
    for (String name : readers.keySet()) {
      System.out.printf(
          Locale.ROOT,
          "tray of %d, %-18s %.1f read, %.1f s at most (processor time)%n",
          count,
          name,
          read.get(name) / (double) SEEDS,
          took.get(name));
    }
    assertThat(wrong).isZero();
    return read.get("this reader") / (double) SEEDS;
  }

  private List<String> texts(GreyImage photograph) {
    return reader.read(photograph, issued).sightings().stream().map(Sighting::text).toList();
  }
}
