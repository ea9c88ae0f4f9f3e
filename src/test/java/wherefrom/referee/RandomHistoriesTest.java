package wherefrom.referee;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Histories drawn from a seed: program and referee say the same all along. */
class RandomHistoriesTest {
  private static final List<Engines> ENGINES =
      List.of(Engines.v8(false), Engines.v8(true), Engines.opposed());

  private final Map<String, String> differences = new ConcurrentHashMap<>();

  /** What the build has time for; the soak plays a million others. */
  @Test
  void sixThousandShortHistories() {
    play(1, Integer.getInteger("referee.short", 6_000));
    assertThat(differences.values()).isEmpty();
  }

  @Test
  @Tag("soak")
  void aMillionShortHistories() {
    play(
        Long.getLong("referee.first", 1_000_000),
        Integer.getInteger("referee.histories", 1_000_000));
    assertThat(differences.values()).isEmpty();
  }

  /** Seven of eight are of V8s, most of them flat; each from one of three starts. */
  private void play(long first, int count) {
    List<List<Bout>> starts =
        ENGINES.stream().map(it -> List.of(it.apart(), it.together(), it.bout())).toList();
    // Every eighth is of an engine without caps, beside those that were asked for.
    LongStream.range(first, first + count * 8L / 7 + 1)
        .parallel()
        .filter(seed -> differences.size() < 20)
        .forEach(
            seed -> {
              int engine = seed % 4 == 0 ? 1 + (int) (seed / 4 % 2) : 0;
              Bout start = starts.get(engine).get((int) (seed / 8 % 3));
              play(start, ENGINES.get(engine).motor(), seed);
            });
  }

  private void play(Bout start, Motor motor, long seed) {
    Optional<Trial> found = Trial.play(start, motor, seed);
    found.ifPresent(
        trial ->
            differences.computeIfAbsent(
                trial.shape(),
                shape -> "\nseed " + seed + ": " + trial.shrunk(start).words(motor)));
  }
}
