package wherefrom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo engine between its two days, by a shell script that knows only the command line. */
class BetweenIT {
  @TempDir Path folder;

  @Test
  void aShellScriptCarriesTheDemoThroughEverythingBetweenTheTwoDays()
      throws IOException, InterruptedException {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "bash runs the script");
    FinishedProgram program = FinishedProgram.in(folder);
    List<String> words = new ArrayList<>(List.of("/bin/bash", "src/test/sh/between.sh"));
    words.addAll(program.words());
    assertThat(program.run(words)).contains("carried from the first look to its record");
  }
}
