package wherefrom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The finished jar, used by a shell script that knows nothing but its command line. */
class OutsideIT {
  @TempDir Path folder;

  /** pdftoppm is a rasteriser from another code base than what wrote the PDF. */
  private List<String> rasteriser() throws IOException {
    boolean installed =
        Arrays.stream(System.getenv("PATH").split(":"))
            .anyMatch(bin -> Files.isExecutable(Path.of(bin, "pdftoppm")));
    if (installed) {
      Path script = folder.resolve("rasterise.sh");
      Files.writeString(script, "pdftoppm -r \"$2\" -gray -png \"$1\" \"$3/page\"\n");
      return List.of("/bin/bash", script.toString());
    }
    return List.of(
        FinishedProgram.JAVA, "-cp", System.getProperty("java.class.path"), "wherefrom.Rasteriser");
  }

  @Test
  void aShellScriptRunsTheWholeJob() throws IOException, InterruptedException {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "bash runs the script");
    FinishedProgram program = FinishedProgram.in(folder);
    List<String> words = new ArrayList<>(List.of("/bin/bash", "src/test/sh/outside.sh"));
    words.addAll(program.words());
    words.add("--");
    words.addAll(rasteriser());
    assertThat(program.run(words)).endsWith("74 read, 74 out, 73 right, 1 stopped, 1 to fit\n");
  }
}
