package wherefrom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The samples of the README and of its page on the command line do what they say: they are run in
 * order, in an empty folder.
 */
class ReadmeSamplesIT {
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```sh\n(.*?)^```$");
  private static final Pattern OURS = Pattern.compile("(?m)^(.*\\| )?wherefrom ");

  private static final List<Path> PAGES =
      List.of(Path.of("README.md"), Path.of("src", "site", "markdown", "command-line.md"));

  @TempDir Path folder;

  private static List<String> samples() throws IOException {
    List<String> samples = new ArrayList<>();
    for (Path page : PAGES) {
      Matcher block = BLOCK.matcher(Files.readString(page));
      while (block.find()) {
        if (OURS.matcher(block.group(1)).find()) {
          samples.add(block.group(1));
        }
      }
    }
    return samples;
  }

  private static String script(FinishedProgram program) throws IOException {
    StringBuilder script = new StringBuilder("set -euo pipefail\n");
    script.append("wherefrom() { '" + String.join("' '", program.words()) + "' \"$@\"; }\n");
    samples().forEach(script::append);
    return script.toString();
  }

  @Test
  void runInOrderAndEndWithEveryPlaceFilled() throws IOException, InterruptedException {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "bash runs the samples");
    assertThat(samples()).hasSizeGreaterThanOrEqualTo(5);
    FinishedProgram program = FinishedProgram.in(folder);
    Path bench = Files.createDirectory(folder.resolve("bench"));
    Path script = Files.writeString(folder.resolve("samples.sh"), script(program));
    String said = program.run(List.of("/bin/bash", script.toString()), bench);
    assertThat(said.lines())
        .contains("87 to fit", "wrong place", "stopped with status 1", "0 to fit")
        .contains("Finished: main bearings.");
    assertThat(bench.resolve("tags.pdf")).isNotEmptyFile();
    assertThat(bench.resolve("first-v8.zip")).isNotEmptyFile();
  }
}
