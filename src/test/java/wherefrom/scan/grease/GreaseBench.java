package wherefrom.scan.grease;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Sighting;
import wherefrom.parts.TagCode;
import wherefrom.scan.PipelineReader;

/**
 * How many damaged tags are read, by this reader and by others: {@code mvn -Pbench test
 * -Dtest=GreaseBench}. {@code -Dgrease.seeds=20} sets the frames for each grade, {@code
 * -Dgrease.first=100} the first seed (0 to 9 are those the reader is tuned on), {@code
 * -Dgrease.others=false} leaves the other readers out, {@code -Dwherefrom.node_modules=DIR} brings
 * in zxing-cpp.
 */
@Tag("bench")
class GreaseBench {
  private static final int SEEDS = Integer.getInteger("grease.seeds", 20);
  private static final int FIRST = Integer.getInteger("grease.first", 100);
  private static final boolean OTHERS = !"false".equals(System.getProperty("grease.others"));
  private static final int[] HEIGHTS = {720, 1080};
  private static final String OURS = "closed list";
  private static final String OPEN = "other engine's tag";
  private static final String TOGETHER = "all other readers together";

  private final List<TagCode> issued = GreaseFrames.issued(1_234_567);
  private final List<TagCode> others = GreaseFrames.issued(7_050_301);
  private final Map<String, GreaseTally> tallies = new LinkedHashMap<>();
  private final Map<Integer, GreasePace> paces = new LinkedHashMap<>();
  private final GreaseLosses losses = new GreaseLosses();

  @Test
  void readsDamagedTags() throws IOException {
    Map<String, Function<GreyImage, List<String>>> readers = new LinkedHashMap<>();
    PipelineReader ours = new PipelineReader();
    PipelineReader open = new PipelineReader();
    readers.put(OURS, image -> texts(ours, image, issued));
    readers.put(OPEN, image -> texts(open, image, others));
    readers.putAll(OTHERS ? OtherReaders.all() : Map.of());
    Optional<ZxingCpp> cpp = OTHERS ? ZxingCpp.find() : Optional.empty();
    cpp.ifPresent(reader -> readers.put("zxing-cpp", reader::read));
    for (int height : HEIGHTS) {
      warmUp(readers, height);
      for (Family family : Family.values()) {
        for (int grade = 1; grade <= Family.GRADES; grade++) {
          for (int seed = FIRST; seed < FIRST + SEEDS; seed++) {
            show(readers, family, grade, seed, height);
          }
        }
      }
    }
    cpp.ifPresent(ZxingCpp::close);
    print();
    assertThat(tallies.get(OURS).wrong()).isZero();
    assertThat(tallies.get(OPEN).wrong()).isZero();
    assertThat(tallies.get(OURS).percent(Family.FIRST)).isGreaterThanOrEqualTo(97.5);
    assertThat(tallies.get(OPEN).percent(Family.FIRST))
        .isGreaterThan(tallies.get(TOGETHER).percent(Family.FIRST));
    for (Family family : Family.values()) {
      assertThat(tallies.get(OURS).percent(family))
          .as("family %s against all others together", family)
          .isGreaterThanOrEqualTo(tallies.get(TOGETHER).percent(family));
    }
  }

  private static List<String> texts(
      PipelineReader reader, GreyImage image, Collection<TagCode> issued) {
    return reader.read(image, issued).sightings().stream().map(Sighting::text).toList();
  }

  /** Shows every reader frames that are not counted: the first of all cost compiling it. */
  private void warmUp(Map<String, Function<GreyImage, List<String>>> readers, int height) {
    for (Family family : Family.values()) {
      TagCode code = GreaseFrames.pick(issued, GreaseFrames.seed(family, 4, FIRST - 1, height));
      GreyImage image = GreaseFrames.frame(family, 4, FIRST - 1, height, code).image();
      readers.values().forEach(reader -> reader.apply(image));
    }
  }

  private void show(
      Map<String, Function<GreyImage, List<String>>> readers,
      Family family,
      int grade,
      int seed,
      int height) {
    TagCode code = GreaseFrames.pick(issued, GreaseFrames.seed(family, grade, seed, height));
    GreaseFrame frame = GreaseFrames.frame(family, grade, seed, height, code);
    Set<String> together = new LinkedHashSet<>();
    readers.forEach(
        (name, reader) -> {
          boolean timed = !name.equals("zxing-cpp");
          long begun = processorTime();
          List<String> texts = reader.apply(frame.image());
          double took = (processorTime() - begun) / 1e6;
          boolean told = timed && height == HEIGHTS[0];
          tally(name).add(family, grade, code.digits(), texts, told ? took : -1);
          if (timed) {
            paces
                .computeIfAbsent(height, made -> new GreasePace())
                .add(name, took, texts.contains(code.digits()));
          }
          if (name.equals(OURS) && !texts.contains(code.digits())) {
            losses.add(family, grade, seed, frame, issued);
          }
          if (!name.equals(OURS) && !name.equals(OPEN)) {
            together.addAll(texts);
          }
        });
    tally(TOGETHER).add(family, grade, code.digits(), new ArrayList<>(together), -1);
  }

  private GreaseTally tally(String name) {
    return tallies.computeIfAbsent(name, made -> new GreaseTally());
  }

  private static long processorTime() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private void print() throws IOException {
    StringBuilder table =
        new StringBuilder("| reader | first families, % | later, % | wrong | ms at 720p |");
    for (Family family : Family.values()) {
      table.append(' ').append(family.name().toLowerCase(Locale.ROOT)).append(" |");
    }
    table
        .append("\n|---|--:|--:|--:|--:|")
        .append("--:|".repeat(Family.values().length))
        .append('\n');
    tallies.forEach((name, tally) -> table.append(tally.row(name)).append('\n'));
    table.append("\n| closed list, by grade | 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 |\n|---|");
    table.append("--:|".repeat(Family.GRADES)).append('\n');
    for (Family family : Family.values()) {
      table.append("| ").append(family.name().toLowerCase(Locale.ROOT)).append(" |");
      for (int grade = 1; grade <= Family.GRADES; grade++) {
        double percent = tallies.get(OURS).percent(family, grade);
        table.append(String.format(Locale.ROOT, " %.0f |", percent));
      }
      table.append('\n');
    }
    paces.forEach(
        (height, pace) -> {
          table.append("\n").append(height).append(" lines\n\n").append(pace.ownTable());
          table.append('\n').append(pace.bothTable(OURS));
        });
    table.append('\n').append(losses.table());
    Path file = Path.of(System.getProperty("wherefrom.target", "target"), "grease.md");
    Files.writeString(file, table);
    new PrintStream(System.out, true, StandardCharsets.UTF_8).println(table);
  }
}
