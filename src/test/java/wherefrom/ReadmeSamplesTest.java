package wherefrom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
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
class ReadmeSamplesTest {
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

  private Path script() throws IOException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    StringBuilder script = new StringBuilder("set -euo pipefail\n");
    script.append("wherefrom() { \"" + java + "\" -XX:TieredStopAtLevel=1 -cp \"$CLASSES\"");
    script.append(" -Dwherefrom.home=\"$PWD/home\" wherefrom.Main \"$@\"; }\n");
    samples().forEach(script::append);
    return Files.writeString(folder.resolve("samples.sh"), script);
  }

  @Test
  void runInOrderAndEndWithEveryPlaceFilled() throws IOException, InterruptedException {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "bash runs the samples");
    assertThat(samples()).hasSizeGreaterThanOrEqualTo(5);
    Path output = folder.resolve("output");
    ProcessBuilder bash = new ProcessBuilder("/bin/bash", script().toString());
    bash.environment().put("CLASSES", System.getProperty("java.class.path"));
    bash.directory(Files.createDirectory(folder.resolve("bench")).toFile());
    bash.redirectErrorStream(true).redirectOutput(output.toFile());
    int status = bash.start().waitFor();
    List<String> lines = Files.readAllLines(output, StandardCharsets.UTF_8);
    assertThat(status).as(String.join("\n", lines)).isZero();
    assertThat(lines)
        .contains("87 to fit", "wrong place", "stopped with status 1", "0 to fit")
        .contains("Finished: main bearings.");
    assertThat(folder.resolve("bench/tags.pdf")).isNotEmptyFile();
    assertThat(folder.resolve("bench/first-v8.zip")).isNotEmptyFile();
  }
}
