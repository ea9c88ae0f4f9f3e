package wherefrom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The samples of the README and of its page on the command line do what they say: they are run in
 * order, in an empty folder.
 */
class ReadmeSamplesIT {
  private static final List<Path> PAGES =
      List.of(Path.of("README.md"), Path.of("src", "site", "markdown", "command-line.md"));

  @TempDir Path folder;

  @Test
  void runInOrderAndEndWithEveryPlaceFilled() throws IOException, InterruptedException {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "bash runs the samples");
    PageSamples samples = PageSamples.ofProgram(PAGES);
    assertThat(samples.count()).isGreaterThanOrEqualTo(5);
    FinishedProgram program = FinishedProgram.in(folder);
    Path bench = Files.createDirectory(folder.resolve("bench"));
    Path script = Files.writeString(folder.resolve("samples.sh"), samples.script(program));
    String said = program.run(List.of("/bin/bash", script.toString()), bench);
    assertThat(said.lines())
        .contains("87 to fit", "wrong place", "stopped with status 1", "0 to fit")
        .contains("Finished: main bearings.");
    assertThat(bench.resolve("tags.pdf")).isNotEmptyFile();
    assertThat(bench.resolve("first-v8.zip")).isNotEmptyFile();
  }
}
