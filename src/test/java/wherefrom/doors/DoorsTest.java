package wherefrom.doors;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.LogbookException;

/**
 * Whatever comes to a door, it is taken or refused with a sentence: within two seconds of processor
 * time and 512 MB, and nothing is written outside the room it was given. A failure names the seed
 * that makes it again.
 */
class DoorsTest {
  private static final long FIRST_SEED = 20_260_101;
  private static final int BUILD = 20_000;
  private static final int SOAK = 1_000_000;
  private static final long MOST_NANOS = 2_000_000_000L;
  private static final long MOST_BYTES = 512L << 20;

  @TempDir Path folder;

  private final ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
  private final List<String> wrong = new ArrayList<>();
  private final Map<String, Tally> tallies = new TreeMap<>();

  @Test
  void twentyThousandInputsAreTakenOrRefusedWithASentence() throws IOException {
    visitRound(BUILD, FIRST_SEED);
    assertThat(tallies.values().stream().mapToInt(Tally::inputs).sum()).isEqualTo(BUILD);
  }

  /** In rounds, each in a room of its own: a job that only grows makes each command dearer. */
  @Test
  @Tag("soak")
  void aMillionInputsAreTakenOrRefusedWithASentence() throws IOException {
    int rounds = Math.max(1, Integer.getInteger("soak.inputs", SOAK) / BUILD);
    long seed = Long.getLong("soak.first", FIRST_SEED + BUILD);
    for (int round = 0; round < rounds; round++) {
      visitRound(BUILD, seed + (long) round * BUILD);
    }
    tallies.forEach((door, tally) -> System.out.println(door + ": " + tally.words()));
    assertThat(tallies.values().stream().mapToInt(Tally::inputs).sum()).isEqualTo(rounds * BUILD);
  }

  private void visitRound(int inputs, long first) throws IOException {
    Path room = Files.createDirectory(folder.resolve("room"));
    Files.writeString(folder.resolve("beside"), "untouched");
    List<String> work = names(Path.of(""));
    try (Doors doors = new Doors(room)) {
      long seed = first;
      for (Door door : doors.all()) {
        for (int left = inputs * door.share() / 1000; left > 0; left--) {
          visit(door, seed++);
        }
      }
    }
    assertThat(wrong).isEmpty();
    // Every door that reads files refuses some of what is spoilt, or nothing was spoilt.
    assertThat(tallies.entrySet().stream().filter(of -> of.getValue().refused() > 0))
        .extracting(Map.Entry::getKey)
        .contains("pictures", "layouts", "stocks", "archives", "tables", "settings")
        .contains("command lines");
    assertThat(names(folder)).containsExactly("beside", "room");
    assertThat(folder.resolve("beside")).hasContent("untouched");
    assertThat(names(Path.of(""))).isEqualTo(work);
    Doors.empty(room);
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  private void visit(Door door, long seed) {
    long self = Thread.currentThread().getId();
    long bytes = threads.getThreadAllocatedBytes(self);
    long nanos = threads.getCurrentThreadCpuTime();
    String said = said(door, seed);
    nanos = threads.getCurrentThreadCpuTime() - nanos;
    bytes = threads.getThreadAllocatedBytes(self) - bytes;
    Tally one = new Tally(1, said.isEmpty() ? 0 : 1, nanos, nanos, bytes);
    tallies.merge(door.name(), one, Tally::and);
    if (nanos > MOST_NANOS || bytes > MOST_BYTES) {
      wrong.add(door.name() + " " + seed + ": " + nanos / 1e9 + " s, " + (bytes >> 20) + " MB");
    }
  }

  private String said(Door door, long seed) {
    String said = "";
    try {
      said = door.visit().of(new Nonsense(seed));
    } catch (IOException | LogbookException | UncheckedIOException | IllegalArgumentException e) {
      said = String.valueOf(e.getMessage());
    } catch (Throwable e) {
      wrong.add(door.name() + " " + seed + ": " + e + " at " + at(e));
    }
    if (!said.isEmpty() && !isSentence(said)) {
      wrong.add(door.name() + " " + seed + " is no sentence: " + said);
    }
    return said;
  }

  private static String at(Throwable fault) {
    return Stream.of(fault.getStackTrace()).limit(6).toList().toString();
  }

  /** Begins, has words, and names no class of the language. */
  private static boolean isSentence(String said) {
    return said.strip().contains(" ")
        && !said.contains("java.")
        && !said.contains("Exception")
        && !said.equals("null");
  }
}
