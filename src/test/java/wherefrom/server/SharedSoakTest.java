package wherefrom.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.settings.ServerAddress;

/**
 * Programs that scan at once on twenty engines, while programs and the server are killed and the
 * way is cut and slowed: {@code -Dshared.benches=8 -Dshared.scans=2000 -Dshared.engines=20}.
 */
@Tag("soak")
class SharedSoakTest {
  private static final int BENCHES = Integer.getInteger("shared.benches", 8);
  private static final int SCANS = Integer.getInteger("shared.scans", 2_000);
  private static final int ENGINES = Integer.getInteger("shared.engines", 20);
  private static final long SEED = Long.getLong("shared.seed", 18);

  /** A program is killed, and begun anew for the scans that it has not shown, so many times. */
  private static final int KILLS = 12;

  private static final int SERVER_KILLS = 3;

  @TempDir Path folder;
  private final Random random = new Random(SEED);
  private int lives;
  private int serverKills;
  private int cuts;
  private int slowed;

  @Test
  void nothingThatWasShownAsDoneIsMissing() throws Exception {
    long begun = System.nanoTime();
    try (Mortal server = new Mortal(folder);
        Crossing crossing = new Crossing(server.port())) {
      SharedJobs jobs = SharedJobs.begun(server.address(server.port()), ENGINES);
      List<Process> programs = new ArrayList<>();
      for (int bench = 1; bench <= BENCHES; bench++) {
        programs.add(start(server.address(crossing.port()), jobs, bench));
      }
      trouble(server, crossing, jobs, programs);
      List<Worker.Shown> shown = new ArrayList<>();
      for (int bench = 1; bench <= BENCHES; bench++) {
        shown(bench).forEach(line -> shown.add(Worker.Shown.read(line)));
      }
      List<Worker.Folded> folded = new ArrayList<>();
      for (int bench = 1; bench <= BENCHES; bench++) {
        lines("folded-" + bench).forEach(line -> folded.add(Worker.Folded.read(line)));
      }
      System.out.printf(
          "%d benches, %d shown, %d lives, server killed %d, cut %d, slowed %d times, %d s%n",
          BENCHES,
          shown.size(),
          lives,
          serverKills,
          cuts,
          slowed,
          (System.nanoTime() - begun) / 1_000_000_000);
      long[] millis = shown.stream().mapToLong(Worker.Shown::millis).sorted().toArray();
      System.out.printf(
          "scan to shown: median %d ms, p95 %d ms, most %d ms%n",
          millis[millis.length / 2], millis[millis.length * 95 / 100], millis[millis.length - 1]);
      assertThat(shown).hasSizeGreaterThan(BENCHES * SCANS / 10);
      assertThat(jobs.faults(shown)).isEmpty();
      assertThat(folded).hasSize(BENCHES * ENGINES);
      assertThat(jobs.otherStates(folded)).isEmpty();
    }
  }

  private Path file(int bench) {
    return folder.resolve("shown-" + bench);
  }

  private List<String> shown(int bench) throws IOException {
    return lines("shown-" + bench);
  }

  private List<String> lines(String name) throws IOException {
    Path file = folder.resolve(name);
    return Files.exists(file) ? Files.readAllLines(file) : List.of();
  }

  private Process start(ServerAddress address, SharedJobs jobs, int bench) throws IOException {
    lives++;
    List<String> words =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-Xmx256m",
            "-cp",
            System.getProperty("java.class.path"),
            SharedProgram.class.getName(),
            address.text(),
            String.join(",", jobs.names()),
            Integer.toString(bench),
            Long.toString(SEED * 1_000 + lives),
            Integer.toString(Math.max(1, SCANS - shown(bench).size())),
            file(bench).toString());
    return new ProcessBuilder(words)
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve("out-" + lives).toFile())
        .start();
  }

  private void trouble(Mortal server, Crossing crossing, SharedJobs jobs, List<Process> programs)
      throws IOException, InterruptedException {
    int kills = 0;
    while (programs.stream().anyMatch(Process::isAlive)) {
      // No wait for anything: so much time goes by between two troubles of programs that only
      // write.
      Thread.sleep(1_000 + random.nextInt(2_000));
      int chance = random.nextInt(10);
      if (chance < 3 && kills < KILLS) {
        int at = random.nextInt(programs.size());
        if (programs.get(at).isAlive()) {
          kills++;
          programs.get(at).destroyForcibly().onExit().join();
          programs.set(at, start(server.address(crossing.port()), jobs, at + 1));
        }
      } else if (chance < 5 && serverKills < SERVER_KILLS) {
        serverKills++;
        server.killAndStart();
      } else if (chance < 8) {
        cuts++;
        crossing.cut();
      } else {
        slowed++;
        crossing.slow(random.nextInt(5));
      }
    }
    for (Process program : programs) {
      assertThat(program.exitValue()).isZero();
    }
    assertThat(kills).as("programs killed").isPositive();
    assertThat(serverKills).as("servers killed").isPositive();
  }
}
